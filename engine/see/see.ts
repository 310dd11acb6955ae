import { type Likely, likely, type NearMiss, nearMisses, type Seen, weigh } from './belief.ts';
import type { SignMatrix } from './matrix.ts';
import { MOST_ASKED, nextQuestion } from './plan.ts';

/** Where the search for the defect stands. */
export type Sighting = {
  /** The next question, or undefined where nothing more can be told apart. */
  readonly question: string | undefined;
  /** Defects that every answer allows, most likely first. */
  readonly likely: readonly Likely[];
  /** Defects that one answer speaks against, then some that two speak against. */
  readonly nearMisses: readonly NearMiss[];
};

/** From what is seen to the defects that show it. `start` weighs the defects beforehand (facts prune). */
export const see = (matrix: SignMatrix, seen: Seen, start?: ArrayLike<number>): Sighting => {
  const weights = weigh(matrix, seen, start);
  const open = matrix.questions.flatMap((question, index) => (seen.has(question) ? [] : [index]));
  const next = seen.size < MOST_ASKED ? nextQuestion(matrix, weights, open) : undefined;
  return {
    question: next === undefined ? undefined : matrix.questions[next],
    likely: likely(matrix, weights),
    nearMisses: nearMisses(matrix, seen),
  };
};
