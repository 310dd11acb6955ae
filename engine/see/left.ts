/** The flaws that are left on a way through the questions. */
import { chance } from './belief.ts';

/** Rows of the flaws that are left, and how likely each is, in parts of any sum; none is nothing. */
export type Left = { readonly flaws: readonly number[]; readonly weights: readonly number[] };

/** Nothing is left to ask once one flaw holds this share of the belief. */
const SURE = 0.9;

export const leftOf = (all: Float64Array): Left => {
  const flaws: number[] = [];
  const weights: number[] = [];
  all.forEach((weight, flaw) => {
    if (weight <= 0) return;
    flaws.push(flaw);
    weights.push(weight);
  });
  return { flaws, weights };
};

/** What an answer leaves, by the row of signs of its question. */
export const afterAnswer = (signs: string, left: Left, answer: 'yes' | 'no'): Left => {
  const flaws: number[] = [];
  const weights: number[] = [];
  left.flaws.forEach((flaw, at) => {
    const weight = (left.weights[at] ?? 0) * chance(signs.charCodeAt(flaw) - 48, answer);
    if (weight <= 0) return;
    flaws.push(flaw);
    weights.push(weight);
  });
  return { flaws, weights };
};

export const sum = ({ weights }: Left): number => {
  let total = 0;
  for (const weight of weights) total += weight;
  return total;
};

export const settled = ({ weights }: Left): boolean => {
  let total = 0;
  let most = 0;
  for (const weight of weights) {
    total += weight;
    if (weight > most) most = weight;
  }
  return most >= SURE * total;
};

export const entropyTerm = (share: number): number => (share > 0 ? share * Math.log2(share) : 0);

/** Bits: no set of yes/no questions that tells these flaws apart can do with fewer on average. */
export const entropyOf = (left: Left): number => {
  const total = sum(left);
  let terms = 0;
  for (const weight of left.weights) terms += entropyTerm(weight);
  return Math.log2(total) - terms / total;
};
