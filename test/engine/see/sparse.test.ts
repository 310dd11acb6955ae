/**
 * The table read flaw by flaw beside the table read whole: what a question tells is reckoned here in the open by Shannon’s
 * formula (A Mathematical Theory of Communication, 1948, § 12). Tables drawn at random, invented.
 */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { afterAnswer, entropyOf, type Left, leftOf } from '#engine/see/left.ts';
import type { SignMatrix } from '#engine/see/matrix.ts';
import { MOST_ASKED, nextQuestion, telling } from '#engine/see/plan.ts';
import { eachTelling, sparseOf } from '#engine/see/sparse.ts';
import { firstInsteadOf, survey } from '#engine/see/survey.ts';
import { chanceFrom } from '../../bench/chance.ts';

const CHANCE = [0, 1, 0.5, 0.9, 0.1];

const tableOf = (signs: readonly string[], prior: readonly number[]): SignMatrix => ({
  defects: prior.map((_, at) => `flaw-${String(at).padStart(4, '0')}`),
  questions: signs.map((_, at) => `question-${at}`),
  prior,
  effort: signs.map(() => 1),
  signs,
});

const bits = (share: number) => (share > 0 ? -share * Math.log2(share) : 0);
const entropy = (shares: readonly number[]) => shares.reduce((sum, share) => sum + bits(share), 0);

/** H(flaw) + H(answer) − H(flaw, answer). */
const toldBy = (signs: string, { flaws, weights }: Left): number => {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const both = flaws.flatMap((flaw, at) => {
    const share = (weights[at] ?? 0) / total;
    const yes = CHANCE[Number(signs[flaw])] ?? Number.NaN;
    return [share * yes, share * (1 - yes)];
  });
  const yes = both.reduce((sum, share, at) => (at % 2 ? sum : sum + share), 0);
  return entropy(weights.map((weight) => weight / total)) + entropy([yes, 1 - yes]) - entropy(both);
};

const anyTable = fc
  .tuple(fc.integer({ min: 2, max: 12 }), fc.integer({ min: 1, max: 8 }))
  .chain(([flaws, questions]) =>
    fc.record({
      signs: fc.array(
        fc
          .array(fc.integer({ min: 0, max: 4 }), { minLength: flaws, maxLength: flaws })
          .map((row) => row.join('')),
        { minLength: questions, maxLength: questions },
      ),
      weights: fc.array(fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 1, noNaN: true })), {
        minLength: flaws,
        maxLength: flaws,
      }),
      closed: fc.array(fc.boolean(), { minLength: questions, maxLength: questions }),
    }),
  );

it('tells of each open question that drops something what Shannon’s formula says, and of no other', () => {
  fc.assert(
    fc.property(anyTable, ({ signs, weights, closed }) => {
      const left = leftOf(Float64Array.from(weights));
      const found = new Map<number, number>();
      const isOpen = Uint8Array.from(closed, (is) => (is ? 0 : 1));
      const sparse = sparseOf(tableOf(signs, weights));
      // Asked twice: nothing of the first time is left behind.
      eachTelling(sparse, left, isOpen, () => {});
      eachTelling(sparse, left, isOpen, (question, gain) => found.set(question, gain));
      const drops = (row: string) =>
        ['0', '1'].every((sign) => left.flaws.some((flaw) => row[flaw] === sign));
      expect([...found.keys()].sort()).toEqual(
        signs.flatMap((row, at) => (drops(row) && !closed[at] ? [at] : [])).sort(),
      );
      for (const [question, gain] of found) expect(gain).toBeCloseTo(toldBy(signs[question] ?? '', left), 9);
    }),
    { numRuns: 300 },
  );
});

it('keeps the flaws that an answer leaves, each by how often it shows it', () => {
  const left = afterAnswer('01234', leftOf(Float64Array.from([1, 1, 1, 0, 2])), 'no');
  expect(left.flaws).toEqual([0, 2, 4]);
  expect(left.weights).toEqual([1, 0.5, expect.closeTo(1.8, 12)]);
  expect(entropyOf(leftOf(Float64Array.from([1, 0, 1, 2])))).toBeCloseTo(1.5, 12);
});

/** Some kin of flaws that few questions part, and marks that are asked of a few: as signs are in truth. */
const largeTable = (flaws: number, seed: number): SignMatrix => {
  const { pick } = chanceFrom(seed);
  const all = Array.from({ length: flaws }, (_, at) => at);
  const shared = Array.from({ length: 14 }, () => all.map(() => pick(['0', '0', '1', '1', '2'])).join(''));
  const marks = Array.from({ length: 60 }, () => {
    const own = new Set(Array.from({ length: 6 }, () => pick(all)));
    return all.map((flaw) => (own.has(flaw) ? pick(['1', '3', '4']) : '0')).join('');
  });
  const weights = all.map(() => pick([1, 3, 9]));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return tableOf(
    [...shared, ...marks],
    weights.map((weight) => weight / total),
  );
};

it('plans a table that is too large to be read whole as it plans the part of it that is left', () => {
  const all = largeTable(300, 7);
  const part = 20;
  const open = [...all.questions.keys()];
  for (const start of [0, 60, 200]) {
    const weights = Float64Array.from(all.prior, (share, at) =>
      at >= start && at < start + part ? share : 0,
    );
    const small = {
      ...all,
      defects: all.defects.slice(start, start + part),
      prior: all.prior.slice(start, start + part),
      signs: all.signs.map((row) => row.slice(start, start + part)),
    };
    const own = weights.slice(start, start + part);
    const [large, whole] = [telling(all, weights, open), telling(small, own, open)];
    expect([...large].sort()).toEqual([...whole].sort());
    const left = leftOf(weights);
    const bitsOf = (question: number) => toldBy(all.signs[question] ?? '', left);
    for (const [at, question] of large.entries())
      expect(bitsOf(question)).toBeCloseTo(bitsOf(whole[at] ?? -1), 9);
    const [asked, askedOfPart] = [nextQuestion(all, weights, open), nextQuestion(small, own, open)];
    expect(asked).toBeDefined();
    expect(bitsOf(asked ?? -1)).toBeCloseTo(bitsOf(askedOfPart ?? -1), 9);
  }
});

it('surveys a large table within what nobody is asked more of, near the least that any questions could do with', () => {
  const matrix = largeTable(300, 11);
  const figures = survey(matrix);
  expect(figures.worst).toBeLessThanOrEqual(MOST_ASKED);
  expect(figures.questions).toBeLessThan(figures.fixedOrder);
  expect(figures.questions).toBeLessThan(figures.entropy + 1.5);
  // Each way is planned once; from a table that nobody has planned yet the same comes out.
  const flaw = matrix.defects[17] ?? '';
  expect(firstInsteadOf(matrix, flaw)).toBe(firstInsteadOf({ ...matrix }, flaw));
  expect(survey(matrix)).toEqual(survey({ ...matrix }));
});
