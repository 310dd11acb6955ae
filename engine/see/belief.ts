import type { Answer } from '../case/case.ts';
import { NO, type SignMatrix, YES, YES_CHANCE } from './matrix.ts';

export type Seen = ReadonlyMap<string, Answer>;

/** How likely an answer is for a sign. */
export const chance = (sign: number, answer: 'yes' | 'no'): number => {
  const yes = YES_CHANCE[sign] ?? 0.5;
  return answer === 'yes' ? yes : 1 - yes;
};

const signAt = (matrix: SignMatrix, question: number, defect: number): number =>
  (matrix.signs[question] ?? '').charCodeAt(defect) - 48;

/** Weights of the defects after one more answer, from weights before it. */
export const after = (
  matrix: SignMatrix,
  weights: Float64Array,
  question: number,
  answer: 'yes' | 'no',
): Float64Array =>
  weights.map((weight, defect) => (weight ? weight * chance(signAt(matrix, question, defect), answer) : 0));

/** Weights of the defects for all answers; can't tell changes nothing. Not normalized. */
export const weigh = (
  matrix: SignMatrix,
  seen: Seen,
  start: ArrayLike<number> = matrix.prior,
): Float64Array => {
  let weights: Float64Array = Float64Array.from(start);
  for (const [question, answer] of seen) {
    const index = matrix.questions.indexOf(question);
    if (index >= 0 && answer !== 'unsure') weights = after(matrix, weights, index, answer);
  }
  return weights;
};

export type Likely = { readonly defect: string; readonly chance: number };
/** A defect that answers speak against; `and` is the second answer where it takes two. */
export type NearMiss = { readonly defect: string; readonly question: string; readonly and?: string };

/** Defects that every answer allows, most likely first. */
export const likely = (matrix: SignMatrix, weights: Float64Array): Likely[] => {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return matrix.defects
    .map((defect, index) => ({ defect, chance: total ? (weights[index] ?? 0) / total : 0 }))
    .filter((one) => one.chance > 0)
    .sort((a, b) => b.chance - a.chance || (a.defect < b.defect ? -1 : 1));
};

/** Share of answers, 0–1, that we reckon to be wrong: our estimate. */
const ERRS = 0.03;
/** Where fewer miss by one answer, those that miss by two fill the list up to this many. */
const NEAR_LISTED = 24;

const chanceWithErrors = (sign: number, answer: 'yes' | 'no'): number =>
  chance(sign, answer) * (1 - 2 * ERRS) + ERRS;

/**
 * Defects that one answer speaks against, with that answer: people err. Then those that two speak against, while the
 * list is short: two slips in one search are met once in eighty. Each kind most likely first, slips reckoned in.
 */
export const nearMisses = (matrix: SignMatrix, seen: Seen): NearMiss[] => {
  const asked = [...seen].flatMap(([question, answer]) => {
    const index = matrix.questions.indexOf(question);
    return index >= 0 && answer !== 'unsure' ? [{ question, index, answer }] : [];
  });
  const missed = matrix.defects.flatMap((defect, d) => {
    const against = asked.filter(
      ({ index, answer }) => signAt(matrix, index, d) === (answer === 'yes' ? NO : YES),
    );
    const [first, second] = against;
    if (!first || against.length > 2) return [];
    const weight = asked.reduce(
      (product, { index, answer }) => product * chanceWithErrors(signAt(matrix, index, d), answer),
      matrix.prior[d] ?? 0,
    );
    const near: NearMiss = { defect, question: first.question, ...(second ? { and: second.question } : {}) };
    return [{ near, weight }];
  });
  const listed = (and: boolean): NearMiss[] =>
    missed
      .filter(({ near }) => (near.and !== undefined) === and)
      .sort((a, b) => b.weight - a.weight || (a.near.defect < b.near.defect ? -1 : 1))
      .map(({ near }) => near);
  const byOne = listed(false);
  return [...byOne, ...listed(true).slice(0, Math.max(0, NEAR_LISTED - byOne.length))];
};
