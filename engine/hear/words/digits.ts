const ONES = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const TENS = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];
const BELOW_HUNDRED = String.raw`(?<tens>${TENS.join('|')})(?:[\s-](?<ones>${ONES.join('|')})(?![\s-]*(?:coats?|hundred)))?`;
const SPELLED = new RegExp(
  String.raw`\b(?:(?:a|one) hundred(?: and)?(?: (?:a )?(?:(?<more>${ONES.join('|')})|(?<ten>ten)))?|${BELOW_HUNDRED})\b`,
  'gi',
);
const MAY_SPELL = new RegExp(`${TENS.join('|')}|hundred`, 'i');

/** A text with numbers from twenty on in digits, each as long as it was, so that all places in it stay. */
export const inDigits = (text: string): string => {
  if (!MAY_SPELL.test(text)) return text;
  return text.replace(SPELLED, (said, ...rest) => {
    const { tens, ones, more, ten } = rest.at(-1) as Record<string, string | undefined>;
    const one = ONES.indexOf((ones ?? more ?? '').toLowerCase()) + 1;
    const value = tens ? (TENS.indexOf(tens.toLowerCase()) + 2) * 10 + one : 100 + one + (ten ? 10 : 0);
    return String(value).padEnd(said.length);
  });
};
