import { numbersIn } from '#engine/model/whom.ts';
import { ended, upper } from '#engine/plain/text.ts';

const SENTENCES = new Intl.Segmenter('en', { granularity: 'sentence' });

/** The sentences of a text, one after another. */
export const sentencesOf = (text: string): readonly string[] =>
  [...SENTENCES.segment(text)].map(({ segment }) => segment.trim());

/** The orders of a text, a sentence each; a question stands with its answer: `Sanded some already? Stop, …`. */
export const ordersIn = (text: string): readonly string[] => {
  const sentences = sentencesOf(text);
  return sentences.flatMap((sentence, at) => {
    if (sentence.endsWith('?') && at + 1 < sentences.length) return [];
    const before = sentences[at - 1];
    return before?.endsWith('?') ? [`${before} ${sentence}`] : [sentence];
  });
};

/** The orders below the numbers to call: what names those again is not said twice. */
export const ordersBelowCalls = (text: string): readonly string[] =>
  ordersIn(text).filter((says) => {
    const inIt = numbersIn(says);
    return !(inIt.includes('emergency') && inIt.includes('poison'));
  });

/** The longest beginning that is still a heading: `Swallowed:`, `Before you leave, every time:`, `Sanded already?` */
const LEAD = /^([^:.?]{2,60}[:?]) (.+)$/s;

/** What an order is about, and what it says; most begin with no such word. */
export const leadOf = (sentence: string): { readonly lead: string; readonly rest: string } => {
  const [, lead = '', rest = sentence] = LEAD.exec(sentence) ?? [];
  return { lead, rest };
};

/** What forbids is marked: a hurried eye must not miss it. */
export const forbids = (sentence: string): boolean =>
  /^(?:Never|No|Not|Nothing|Nobody|Do not|Don’t|Keep out)\b/.test(sentence);

/** The ways that an order leaves open, where it sets them off: `lay it flat; or put it into a tin`. */
export const waysOf = (order: string): readonly string[] => {
  const ways = order.split(/; (?=or )/);
  return ways.length > 1 ? ways.map((way) => ended(upper(way))) : ways.map(upper);
};
