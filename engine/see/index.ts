import { answerOf } from '../answers.ts';
import type { Case } from '../case.ts';
import type { Knowledge } from '../knowledge.ts';
import {
  type Likely,
  likely,
  type NearMiss,
  nearMisses,
  type Seen,
  type SeenAnswer,
  weigh,
} from './belief.ts';
import type { SignMatrix } from './matrix.ts';
import { MOST_ASKED, nextQuestion } from './plan.ts';

export type { Likely, NearMiss, Seen, SeenAnswer } from './belief.ts';
export { matrixOf, type SignMatrix } from './matrix.ts';

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

/** The prior with the defects left out that the known kind of top coat never shows. */
export const startFor = (known: Knowledge, matrix: SignMatrix, on: Case): number[] => {
  const family = on['family']?.value;
  return matrix.defects.map((id, index) => {
    const families: readonly string[] = known.get('defect', id).families;
    return family && !families.includes(String(family)) ? 0 : (matrix.prior[index] ?? 0);
  });
};

/** Answers that the case gives already, to the questions of the table. */
export const seenIn = (known: Knowledge, matrix: SignMatrix, on: Case): Map<string, SeenAnswer> =>
  new Map(
    matrix.questions.flatMap((question) => {
      const answer = answerOf(known, on, question);
      return answer ? [[question, answer] as const] : [];
    }),
  );
