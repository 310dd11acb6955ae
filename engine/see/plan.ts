import { after } from './belief.ts';
import { NO, type SignMatrix, YES, YES_CHANCE } from './matrix.ts';

/** Nothing is left to ask once one defect holds this share of the belief. */
const SURE = 0.9;
/** Nobody is asked more than this; what is left then stands as a list. */
export const MOST_ASKED = 10;
/** How many of the best questions are looked through to the end. */
const LOOKED_THROUGH = 6;
/** An easier question may cost this many expected questions more and still go first. */
const EFFORT_WORTH = 0.02;

type Ranked = { readonly question: number; readonly gain: number };

const entropyTerm = (x: number): number => (x > 0 ? x * Math.log2(x) : 0);

/** Bits that each question still open is expected to tell, best first; questions that drop nothing are left out. */
const ranked = (matrix: SignMatrix, weights: Float64Array, open: readonly number[]): Ranked[] => {
  const left: number[] = [];
  let total = 0;
  let before = 0;
  for (let d = 0; d < weights.length; d++) {
    const weight = weights[d] ?? 0;
    if (weight <= 0) continue;
    left.push(d);
    total += weight;
    before += entropyTerm(weight);
  }
  const found: Ranked[] = [];
  for (const question of open) {
    const signs = matrix.signs[question] ?? '';
    let yes = 0;
    let no = 0;
    let yesTerms = 0;
    let noTerms = 0;
    let strictYes = false;
    let strictNo = false;
    for (const d of left) {
      const weight = weights[d] ?? 0;
      const sign = signs.charCodeAt(d) - 48;
      const yesPart = weight * (YES_CHANCE[sign] ?? 0.5);
      const noPart = weight - yesPart;
      strictYes ||= sign === YES;
      strictNo ||= sign === NO;
      yes += yesPart;
      no += noPart;
      yesTerms += entropyTerm(yesPart);
      noTerms += entropyTerm(noPart);
    }
    if (!strictYes || !strictNo) continue;
    const entropyBefore = Math.log2(total) - before / total;
    const entropyAfter =
      (yes * (Math.log2(yes) - yesTerms / yes) + no * (Math.log2(no) - noTerms / no)) / total;
    found.push({ question, gain: entropyBefore - entropyAfter });
  }
  return found.sort((a, b) => b.gain - a.gain || a.question - b.question);
};

const settled = (weights: Float64Array): boolean => {
  let total = 0;
  let most = 0;
  for (const weight of weights) {
    total += weight;
    if (weight > most) most = weight;
  }
  return most >= SURE * total;
};

const sum = (weights: Float64Array): number => weights.reduce((all, weight) => all + weight, 0);

/**
 * What tells none of these defects apart tells none of fewer apart either, so the others alone are asked of further on.
 */
const numbersOf = (found: readonly Ranked[]): readonly number[] => found.map(({ question }) => question);

/** Expected further questions if from here on always the most telling one is asked. */
const greedyCost = (matrix: SignMatrix, weights: Float64Array, open: readonly number[]): number => {
  if (settled(weights)) return 0;
  const found = ranked(matrix, weights, open);
  const [best] = found;
  return best ? 1 + spread(matrix, weights, best.question, numbersOf(found), greedyCost) : 0;
};

type Cost = (matrix: SignMatrix, weights: Float64Array, open: readonly number[]) => number;

const spread = (
  matrix: SignMatrix,
  weights: Float64Array,
  question: number,
  open: readonly number[],
  cost: Cost,
): number => {
  const rest = open.filter((other) => other !== question);
  const total = sum(weights);
  let expected = 0;
  for (const answer of ['yes', 'no'] as const) {
    const next = after(matrix, weights, question, answer);
    const share = sum(next) / total;
    if (share > 0) expected += share * cost(matrix, next, rest);
  }
  return expected;
};

/** Questions that still tell the defects apart, most telling first. */
export const telling = (matrix: SignMatrix, weights: Float64Array, open: readonly number[]): number[] =>
  settled(weights) ? [] : ranked(matrix, weights, open).map(({ question }) => question);

/**
 * The question to ask next, or undefined where one defect is as good as sure or none can be told apart further.
 * Looks the most telling few through to the end instead of trusting one step; the easiest wins among equals.
 */
export const nextQuestion = (
  matrix: SignMatrix,
  weights: Float64Array,
  open: readonly number[],
): number | undefined => {
  if (settled(weights)) return undefined;
  const found = ranked(matrix, weights, open);
  const best = found.slice(0, LOOKED_THROUGH);
  const rest = numbersOf(found);
  let chosen: { question: number; cost: number } | undefined;
  for (const { question } of best) {
    const cost =
      spread(matrix, weights, question, rest, greedyCost) +
      EFFORT_WORTH * ((matrix.effort[question] ?? 1) - 1);
    if (!chosen || cost < chosen.cost - 1e-9) chosen = { question, cost };
  }
  return chosen?.question;
};
