import { afterAnswer, entropyOf, entropyTerm, type Left, leftOf, settled, sum } from './left.ts';
import { NO, type SignMatrix, YES, YES_CHANCE } from './matrix.ts';
import { eachTelling, sparseOf } from './sparse.ts';

/** Nobody is asked more than this; what is left then stands as a list. */
export const MOST_ASKED = 10;
/** How many of the best questions are looked through to the end. */
const LOOKED_THROUGH = 6;
/** An easier question may cost this many expected questions more and still go first. */
const EFFORT_WORTH = 0.02;
/**
 * A table of so many defects is read whole and looked through to the end: that is as fast, and questions that tell the
 * same tell it to the last bit, so that the first of them stays the first.
 */
const READ_WHOLE = 256;

type Ranked = { readonly question: number; readonly gain: number };
/** The questions of these that drop something whatever the answer, each with the bits that it is expected to tell. */
type Rank = (left: Left, open: readonly number[]) => Ranked[];

const readWhole =
  ({ signs: table }: SignMatrix): Rank =>
  ({ flaws, weights }, open) => {
    let total = 0;
    let before = 0;
    for (const weight of weights) {
      total += weight;
      before += entropyTerm(weight);
    }
    const found: Ranked[] = [];
    for (const question of open) {
      const signs = table[question] ?? '';
      let yes = 0;
      let no = 0;
      let yesTerms = 0;
      let noTerms = 0;
      let strictYes = false;
      let strictNo = false;
      for (let i = 0; i < flaws.length; i++) {
        const weight = weights[i] ?? 0;
        const sign = signs.charCodeAt(flaws[i] ?? 0) - 48;
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
    return found;
  };

/** Of what is asked on the way down nothing is found again: either answer leaves no defect that it would drop. */
const readSparse = (matrix: SignMatrix, open: readonly number[]): Rank => {
  const isOpen = new Uint8Array(matrix.questions.length);
  for (const question of open) isOpen[question] = 1;
  const signs = sparseOf(matrix);
  return (left) => {
    const found: Ranked[] = [];
    eachTelling(signs, left, isOpen, (question, gain) => {
      found.push({ question, gain });
    });
    return found;
  };
};

/** Most telling first. */
const byGain = (a: Ranked, b: Ranked): number => b.gain - a.gain || a.question - b.question;

/** How questions are weighed against each other in one table. */
type Plan = { readonly matrix: SignMatrix; readonly rank: Rank; readonly horizon: number };

const planOf = (matrix: SignMatrix, open: readonly number[]): Plan =>
  matrix.defects.length > READ_WHOLE
    ? { matrix, rank: readSparse(matrix, open), horizon: MOST_ASKED }
    : { matrix, rank: readWhole(matrix), horizon: Number.POSITIVE_INFINITY };

/**
 * What tells none of these defects apart tells none of fewer apart either, so the others alone are asked of further on.
 */
const numbersOf = (found: readonly Ranked[]): readonly number[] => found.map(({ question }) => question);

/**
 * Expected further questions if from here on always the most telling one is asked. Behind the horizon, where nobody is
 * asked any more, the least that any questions could do with stands for them.
 */
const greedyCost = (plan: Plan, left: Left, open: readonly number[], ahead: number): number => {
  if (settled(left)) return 0;
  if (ahead === plan.horizon) return entropyOf(left);
  const found = plan.rank(left, open);
  let best = found[0];
  for (const one of found) if (best && byGain(one, best) < 0) best = one;
  return best ? 1 + spread(plan, left, best.question, numbersOf(found), ahead) : 0;
};

/** Expected further questions after this one, which is so many ahead. */
const spread = (plan: Plan, left: Left, question: number, open: readonly number[], ahead: number): number => {
  const rest = open.filter((other) => other !== question);
  const total = sum(left);
  let expected = 0;
  for (const answer of ['yes', 'no'] as const) {
    const next = afterAnswer(plan.matrix.signs[question] ?? '', left, answer);
    const share = sum(next) / total;
    if (share > 0) expected += share * greedyCost(plan, next, rest, ahead + 1);
  }
  return expected;
};

const ranked = ({ rank }: Plan, left: Left, open: readonly number[]): readonly Ranked[] =>
  settled(left) ? [] : rank(left, open).sort(byGain);

/** Questions that still tell the defects apart, most telling first. */
export const tellingOf = (matrix: SignMatrix, left: Left, open: readonly number[]): number[] =>
  ranked(planOf(matrix, open), left, open).map(({ question }) => question);

export const telling = (matrix: SignMatrix, weights: Float64Array, open: readonly number[]): number[] =>
  tellingOf(matrix, leftOf(weights), open);

/**
 * The question to ask next, or undefined where one defect is as good as sure or none can be told apart further.
 * Looks the most telling few through to the end instead of trusting one step; the easiest wins among equals.
 */
export const nextOf = (matrix: SignMatrix, left: Left, open: readonly number[]): number | undefined => {
  const plan = planOf(matrix, open);
  const found = ranked(plan, left, open);
  const rest = numbersOf(found);
  let chosen: { question: number; cost: number } | undefined;
  for (const { question } of found.slice(0, LOOKED_THROUGH)) {
    const cost = spread(plan, left, question, rest, 0) + EFFORT_WORTH * ((matrix.effort[question] ?? 1) - 1);
    if (!chosen || cost < chosen.cost - 1e-9) chosen = { question, cost };
  }
  return chosen?.question;
};

export const nextQuestion = (
  matrix: SignMatrix,
  weights: Float64Array,
  open: readonly number[],
): number | undefined => nextOf(matrix, leftOf(weights), open);
