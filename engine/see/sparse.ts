/**
 * The same table, read flaw by flaw. Of a great many questions a flaw shows what most flaws show; only where it differs is
 * written down. What all questions tell of the flaws that are left is then reckoned from these alone.
 */
import { entropyTerm, type Left } from './left.ts';
import { NO, type SignMatrix, YES, YES_CHANCE } from './matrix.ts';

export type SparseSigns = {
  /** What most flaws show, for each question. */
  readonly usual: Uint8Array;
  /** Where what differs of each flaw begins in the two lists below; one more at the end. */
  readonly from: Int32Array;
  readonly question: Int32Array;
  readonly sign: Uint8Array;
};

const codeAt = (signs: string, flaw: number): number => signs.charCodeAt(flaw) - 48;

const usualOf = (signs: string): number => {
  const times = YES_CHANCE.map(() => 0);
  for (let flaw = 0; flaw < signs.length; flaw++) times[codeAt(signs, flaw)]! += 1;
  return times.indexOf(Math.max(...times));
};

const made = new WeakMap<SignMatrix, SparseSigns>();

/** Made once for a table. */
export const sparseOf = (matrix: SignMatrix): SparseSigns => {
  const known = made.get(matrix);
  if (known) return known;
  const usual = Uint8Array.from(matrix.signs, usualOf);
  const from = new Int32Array(matrix.defects.length + 1);
  const each = (meet: (flaw: number, question: number, sign: number) => void): void =>
    matrix.signs.forEach((signs, question) => {
      for (let flaw = 0; flaw < signs.length; flaw++) {
        const sign = codeAt(signs, flaw);
        if (sign !== usual[question]) meet(flaw, question, sign);
      }
    });
  each((flaw) => {
    from[flaw + 1]! += 1;
  });
  for (let flaw = 0; flaw < matrix.defects.length; flaw++) from[flaw + 1]! += from[flaw]!;
  const next = from.slice();
  const question = new Int32Array(from.at(-1) ?? 0);
  const sign = new Uint8Array(question.length);
  each((flaw, asked, code) => {
    const at = next[flaw]!;
    next[flaw] = at + 1;
    question[at] = asked;
    sign[at] = code;
  });
  const signs = { usual, from, question, sign };
  made.set(matrix, signs);
  return signs;
};

const NO_CHANCE = YES_CHANCE.map((yes) => 1 - yes);
const YES_BITS = YES_CHANCE.map(entropyTerm);
const NO_BITS = NO_CHANCE.map(entropyTerm);

/** What is summed of each question over the flaws that differ: how many, their weight, its bits, and both for yes. */
type Sums = {
  readonly count: Int32Array;
  readonly weight: Float64Array;
  readonly bits: Float64Array;
  readonly yes: Float64Array;
  readonly yesBits: Float64Array;
  readonly noBits: Float64Array;
  readonly strict: Uint8Array;
};

const sumsOf = (length: number): Sums => ({
  count: new Int32Array(length),
  weight: new Float64Array(length),
  bits: new Float64Array(length),
  yes: new Float64Array(length),
  yesBits: new Float64Array(length),
  noBits: new Float64Array(length),
  strict: new Uint8Array(length),
});
const STRICT_YES = 1;
const STRICT_NO = 2;
const strictOf = (sign: number): number => (sign === YES ? STRICT_YES : sign === NO ? STRICT_NO : 0);

const kept = new WeakMap<SparseSigns, Sums>();

/** Each open question that drops some of the flaws left whatever the answer, with the bits that it is expected to tell. */
export const eachTelling = (
  signs: SparseSigns,
  { flaws, weights }: Left,
  isOpen: Uint8Array,
  tell: (question: number, gain: number) => void,
): void => {
  const sums = kept.get(signs) ?? sumsOf(signs.usual.length);
  kept.set(signs, sums);
  const met: number[] = [];
  let total = 0;
  let before = 0;
  for (let i = 0; i < flaws.length; i++) {
    const flaw = flaws[i]!;
    const weight = weights[i]!;
    const bits = entropyTerm(weight);
    total += weight;
    before += bits;
    for (let at = signs.from[flaw]!, end = signs.from[flaw + 1]!; at < end; at++) {
      const question = signs.question[at]!;
      if (!isOpen[question]) continue;
      const sign = signs.sign[at]!;
      if (sums.count[question] === 0) met.push(question);
      sums.count[question]! += 1;
      sums.weight[question]! += weight;
      sums.bits[question]! += bits;
      sums.yes[question]! += weight * YES_CHANCE[sign]!;
      sums.yesBits[question]! += bits * YES_CHANCE[sign]! + weight * YES_BITS[sign]!;
      sums.noBits[question]! += bits * NO_CHANCE[sign]! + weight * NO_BITS[sign]!;
      sums.strict[question]! |= strictOf(sign);
    }
  }
  const entropy = Math.log2(total) - before / total;
  for (const question of met) {
    const usual = signs.usual[question]!;
    const hasUsual = flaws.length > sums.count[question]!;
    const strict = sums.strict[question]! | (hasUsual ? strictOf(usual) : 0);
    if (strict === (STRICT_YES | STRICT_NO)) {
      // The others show what is usual.
      const weight = hasUsual ? total - sums.weight[question]! : 0;
      const bits = hasUsual ? before - sums.bits[question]! : 0;
      const yes = sums.yes[question]! + weight * YES_CHANCE[usual]!;
      const no = total - yes;
      const yesBits = sums.yesBits[question]! + bits * YES_CHANCE[usual]! + weight * YES_BITS[usual]!;
      const noBits = sums.noBits[question]! + bits * NO_CHANCE[usual]! + weight * NO_BITS[usual]!;
      tell(question, entropy - (entropyTerm(yes) - yesBits + entropyTerm(no) - noBits) / total);
    }
    sums.count[question] = 0;
    sums.weight[question] = 0;
    sums.bits[question] = 0;
    sums.yes[question] = 0;
    sums.yesBits[question] = 0;
    sums.noBits[question] = 0;
    sums.strict[question] = 0;
  }
};
