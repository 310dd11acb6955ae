import type { Stage } from '../../model/stage.ts';
import type { Match } from '../words/match.ts';
import type { Span, Word } from '../words/words.ts';

/** A longer text tells a story, and what stands alone in it may be of another layer. */
const SHORT = 9;

/** "how long till shellac is cured": it is not so yet. */
const TO_COME = /^(how|until|till|til|before)$/;

/**
 * How dry it is, where the last words of a query are no more than that: after a comma, or right behind what is seen or
 * what it lies on ("milky wet"). "White when wet" tells of another time, and "wet spots" of what is seen.
 */
export const bareStage = (
  words: readonly Word[],
  matches: readonly Match[],
): { readonly stage: Stage; readonly span: Span } | undefined => {
  const last = words.at(-1);
  if (!last || last.asks || words.length > SHORT || words.some(({ word }) => TO_COME.test(word)))
    return undefined;
  const told = matches.filter(({ kind, of }) => kind === 'sign' || (kind === 'fact' && of[0] !== 'stage'));
  const ends = matches.filter(
    ({ kind, from, to, size }) => kind === 'alone' && from > 0 && to === words.length && to - from === size,
  );
  // The fewest words first: what stands before them is then seen for what it is.
  for (const { of, from } of ends.sort((a, b) => b.from - a.from)) {
    const parted = words[from]?.part !== words[from - 1]?.part;
    const behind = told.some(({ to }) => to === from);
    const isSeen = told.some((one) => one.kind === 'sign' && one.from < from);
    const isPart = matches.some((one) => one.kind === 'sign' && one.from < from && one.to > from);
    if (isSeen && !isPart && (parted || behind))
      return { stage: of[0] as Stage, span: { from: words[from]?.from ?? 0, to: last.to } };
  }
  return undefined;
};
