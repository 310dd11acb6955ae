import type { Stage } from '../model/stage.ts';
import type { Match } from './match.ts';
import type { Span, Word } from './words.ts';

/** The end of a short query that says how dry it is and no more: "milky over navy, wet". */
const ALONE: readonly (readonly [RegExp, Stage])[] = [
  [/^(?:(?:it|its|is|still|now|all|fully|freshly|while) )*wet$/, 'wet'],
  [
    /^(?:(?:it|its|is|now|already) )*(?:dry|touch dry|dry to (?:the )?touch)(?: now| already)?$/,
    'dry-to-touch',
  ],
  [/^(?:(?:it|its|is|now|fully|already) )*cured$/, 'cured'],
];
/** A longer text tells a story, and what stands alone in it may be of another layer. */
const SHORT = 9;

const endsWith = (said: string): Stage | undefined => ALONE.find(([form]) => form.test(said))?.[1];

/**
 * How dry it is, where the last words of a query are no more than that: after a comma, or right behind what is seen or
 * what it lies on ("milky wet"). "White when wet" tells of another time, and "wet spots" of what is seen.
 */
export const bareStage = (
  words: readonly Word[],
  matches: readonly Match[],
): { readonly stage: Stage; readonly span: Span } | undefined => {
  const last = words.at(-1);
  if (!last || last.asks || words.length > SHORT) return undefined;
  const told = matches.filter(({ kind, of }) => kind === 'sign' || (kind === 'fact' && of[0] !== 'stage'));
  for (let from = words.length - 1; from > 0; from--) {
    const stage = endsWith(
      words
        .slice(from)
        .map(({ word }) => word)
        .join(' '),
    );
    const parted = words[from]?.part !== words[from - 1]?.part;
    const behind = told.some(({ to }) => to === from);
    const isSeen = told.some((one) => one.kind === 'sign' && one.from < from);
    const isPart = matches.some((one) => one.kind === 'sign' && one.from < from && one.to > from);
    if (stage && isSeen && !isPart && (parted || behind))
      return { stage, span: { from: words[from]?.from ?? 0, to: last.to } };
  }
  return undefined;
};
