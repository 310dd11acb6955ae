import { NO, type SignMatrix, YES, YES_CHANCE } from './matrix.ts';

export type SeenAnswer = 'yes' | 'no' | 'unsure';
export type Seen = ReadonlyMap<string, SeenAnswer>;

/** How likely an answer is for a sign. */
const chance = (sign: number, answer: 'yes' | 'no'): number => {
  const yes = YES_CHANCE[sign] ?? 0.5;
  return answer === 'yes' ? yes : 1 - yes;
};

export const signAt = (matrix: SignMatrix, question: number, defect: number): number =>
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
export type NearMiss = { readonly defect: string; readonly question: string };

/** Defects that every answer allows, most likely first. */
export const likely = (matrix: SignMatrix, weights: Float64Array): Likely[] => {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return matrix.defects
    .map((defect, index) => ({ defect, chance: total ? (weights[index] ?? 0) / total : 0 }))
    .filter((one) => one.chance > 0)
    .sort((a, b) => b.chance - a.chance || (a.defect < b.defect ? -1 : 1));
};

/** Defects that one single answer speaks against, with that answer: people err. Most common first. */
export const nearMisses = (matrix: SignMatrix, seen: Seen): NearMiss[] => {
  const asked = [...seen].flatMap(([question, answer]) => {
    const index = matrix.questions.indexOf(question);
    return index >= 0 && answer !== 'unsure'
      ? [{ question, index, wanted: answer === 'yes' ? NO : YES }]
      : [];
  });
  return matrix.defects
    .flatMap((defect, index) => {
      const against = asked.filter((one) => signAt(matrix, one.index, index) === one.wanted);
      const [only, second] = against;
      return only && !second ? [{ defect, question: only.question, prior: matrix.prior[index] ?? 0 }] : [];
    })
    .sort((a, b) => b.prior - a.prior || (a.defect < b.defect ? -1 : 1))
    .map(({ defect, question }) => ({ defect, question }));
};
