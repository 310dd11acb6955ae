/** What an author answers, put into ids and signs; and what of it can not be used. */
import type { Sign } from '#engine/model/defect.ts';

export const idOf = (words: string): string =>
  words
    .toLowerCase()
    .replace(/[’']/g, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^[-0-9]+|-+$/g, '');

/** Words that an id does not end with: what they lead to was cut off. */
const SMALL = new Set(
  'a an and any are as at be but by for from has have in into is it its next not of off on onto or out over so than that the then there this to under up was were when where with'.split(
    ' ',
  ),
);

/** A question as an id of five words at most, which ends with a word that says something. */
export const questionId = (ask: string): string => {
  const words = idOf(ask.replace(/^(is|are|does|do|did|can|was|were|has|have) (it|you|there|the)\b/i, ''))
    .split('-')
    .slice(0, 5);
  const last = words.findLastIndex((word) => !SMALL.has(word));
  return (last < 0 ? words : words.slice(0, last + 1)).join('-');
};

/** `1 3` or `1,3` or ids → the things that are meant; what is none of them is left as words. */
export const chosen = (answer: string, offered: readonly string[]): readonly string[] => {
  const parts = /^[\d\s,]+$/.test(answer) ? answer.split(/[\s,]+/) : answer.split(/\s*,\s*/);
  return [
    ...new Set(
      parts.filter(Boolean).map((part) => (/^\d+$/.test(part) ? (offered[Number(part) - 1] ?? part) : part)),
    ),
  ];
};

export const listed = (
  items: readonly { readonly id: string; readonly title: string; readonly says?: string }[],
) => items.map(({ id, title, says }, at) => `  ${at + 1}. ${title} (${id})${says ? `: ${says}` : ''}`);

export const SIGN_OF: Readonly<Record<string, Sign>> = {
  y: 'yes',
  yes: 'yes',
  n: 'no',
  no: 'no',
  my: 'mostly-yes',
  'mostly-yes': 'mostly-yes',
  mn: 'mostly-no',
  'mostly-no': 'mostly-no',
  e: 'either',
  either: 'either',
};
export const ANSWERS = 'y yes, n no, my mostly yes, mn mostly no, e either (Enter), ? how to tell';

export const refuseSign = (answer: string): string | undefined =>
  answer === '' || answer in SIGN_OF ? undefined : `answer with ${ANSWERS}`;

/** Only names that are offered. */
export const refuseOthers =
  (offered: readonly string[]) =>
  (answer: string): string | undefined => {
    const strange = chosen(answer, offered).find((one) => !offered.includes(one));
    return strange === undefined ? undefined : `"${strange}" is none of these; give numbers or names`;
  };
