/**
 * Which question tells most, against Shannon's own formula (A Mathematical Theory of Communication, 1948, § 12): what an
 * answer tells of a flaw is H(flaw) + H(answer) − H(flaw, answer). Small invented tables, reckoned in the open.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { after, likely, weigh } from '#engine/see/belief.ts';
import type { SignMatrix } from '#engine/see/matrix.ts';
import { nextQuestion, telling } from '#engine/see/plan.ts';

/** no, yes, either, mostly yes, mostly no: how often a flaw shows yes. */
const CHANCE = [0, 1, 0.5, 0.9, 0.1];
const matrix = (signs: readonly string[], more: Partial<SignMatrix> = {}): SignMatrix => {
  const count = signs[0]?.length ?? 0;
  return {
    defects: Array.from({ length: count }, (_, at) => `flaw-${at}`),
    questions: signs.map((_, at) => `question-${at}`),
    prior: Array.from({ length: count }, () => 1 / count),
    effort: signs.map(() => 1),
    signs,
    ...more,
  };
};

const entropy = (shares: readonly number[]): number =>
  shares.reduce((sum, share) => (share > 0 ? sum - share * Math.log2(share) : sum), 0);

/** What a question tells, in bits. */
const told = (signs: string, weights: readonly number[]): number => {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const flaw = weights.map((weight) => weight / total);
  const both = flaw.flatMap((share, at) => {
    const yes = CHANCE[Number(signs[at])] ?? 0.5;
    return [share * yes, share * (1 - yes)];
  });
  const yes = both.filter((_, at) => at % 2 === 0).reduce((sum, share) => sum + share, 0);
  return entropy(flaw) + entropy([yes, 1 - yes]) - entropy(both);
};

const all = (table: SignMatrix) => table.questions.map((_, at) => at);

/** A table of signs drawn at random, and how likely each flaw is. */
const anyTable = fc
  .tuple(fc.integer({ min: 2, max: 6 }), fc.integer({ min: 1, max: 5 }))
  .chain(([flaws, questions]) =>
    fc.record({
      signs: fc.array(
        fc
          .array(fc.integer({ min: 0, max: 4 }), { minLength: flaws, maxLength: flaws })
          .map((row) => row.join('')),
        { minLength: questions, maxLength: questions },
      ),
      weights: fc.array(fc.integer({ min: 0, max: 9 }), { minLength: flaws, maxLength: flaws }),
    }),
  );

describe('the most telling question', () => {
  it('is the one that Shannon’s formula says, in any table', () => {
    fc.assert(
      fc.property(anyTable, ({ signs, weights }) => {
        const found = telling(
          matrix(signs),
          Float64Array.from(weights),
          signs.map((_, at) => at),
        );
        const total = weights.reduce((sum, weight) => sum + weight, 0);
        if (Math.max(...weights) >= 0.9 * total) {
          expect(found).toEqual([]);
          return;
        }
        const left = weights.flatMap((weight, at) => (weight > 0 ? [at] : []));
        const drops = (row: string) =>
          left.some((at) => row[at] === '0') && left.some((at) => row[at] === '1');
        expect([...found].sort()).toEqual(signs.flatMap((row, at) => (drops(row) ? [at] : [])).sort());
        const bits = found.map((at) => told(signs[at] ?? '', weights));
        for (let at = 1; at < bits.length; at++)
          expect(bits[at]).toBeLessThanOrEqual((bits[at - 1] ?? 0) + 1e-9);
      }),
      { numRuns: 150 },
    );
  });

  it('of two that tell the same the first goes first', () => {
    expect(telling(matrix(['0011', '0011', '0111']), new Float64Array(4).fill(1), [2, 1, 0])).toEqual([
      0, 1, 2,
    ]);
  });
});

describe('what is asked next', () => {
  it('halves four flaws alike', () => {
    const table = matrix(['0111', '0011', '0001']);
    expect(nextQuestion(table, new Float64Array(4).fill(1), all(table))).toBe(1);
  });

  it('is nothing once one flaw holds nine tenths, or where nothing tells them apart', () => {
    const table = matrix(['01', '22']);
    expect(nextQuestion(table, Float64Array.from([9, 1]), all(table))).toBeUndefined();
    expect(nextQuestion(table, Float64Array.from([8.9, 1.1]), all(table))).toBe(0);
    expect(nextQuestion(table, Float64Array.from([1, 1]), [1])).toBeUndefined();
    expect(telling(table, Float64Array.from([9, 1]), [0])).toEqual([]);
  });

  it('of two that do the same the easier goes first, and the harder where it saves a question', () => {
    const same = matrix(['0011', '0101', '0011', '0101'], { effort: [3, 3, 1, 1] });
    expect([2, 3]).toContain(nextQuestion(same, new Float64Array(4).fill(1), all(same)));
    const saves = matrix(['0011', '0111', '0101', '0001'], { effort: [3, 1, 1, 1] });
    expect([0, 2]).toContain(nextQuestion(saves, new Float64Array(4).fill(1), all(saves)));
  });

  it('is asked only of what is open', () => {
    const table = matrix(['0011', '0101']);
    expect(nextQuestion(table, new Float64Array(4).fill(1), [1])).toBe(1);
    expect(nextQuestion(table, new Float64Array(4).fill(1), [])).toBeUndefined();
  });

  /** Further questions if from each stop on the most telling one is asked, way by way. */
  const costOf = (table: SignMatrix, now: Float64Array, open: readonly number[]): number => {
    const [best] = telling(table, now, open);
    return best === undefined ? 0 : 1 + costBelow(table, now, best, open);
  };
  const costBelow = (
    table: SignMatrix,
    now: Float64Array,
    question: number,
    open: readonly number[],
  ): number => {
    const total = now.reduce((sum, weight) => sum + weight, 0);
    const rest = open.filter((one) => one !== question);
    return (['yes', 'no'] as const).reduce((sum, answer) => {
      const next = after(table, now, question, answer);
      const share = next.reduce((part, weight) => part + weight, 0) / total;
      return share > 0 ? sum + share * costOf(table, next, rest) : sum;
    }, 0);
  };

  it('looks to the end: of any table the question after which fewest are left to ask', () => {
    fc.assert(
      fc.property(anyTable, ({ signs, weights }) => {
        const own = matrix(signs);
        const now = Float64Array.from(weights);
        const chosen = nextQuestion(own, now, all(own));
        const costs = telling(own, now, all(own)).map((question) => costBelow(own, now, question, all(own)));
        if (chosen === undefined) expect(costs).toEqual([]);
        else expect(costBelow(own, now, chosen, all(own))).toBeCloseTo(Math.min(...costs), 9);
      }),
      { numRuns: 150 },
    );
  });

  it('looks to the end: what tells most at once need not go first', () => {
    // Eight flaws. The first question halves them and leaves halves that two more each part; of any start the least.
    const own = matrix(['00001111', '00110011', '01010101', '00010111']);
    const now = new Float64Array(8).fill(1);
    const chosen = nextQuestion(own, now, all(own)) ?? -1;
    expect(costBelow(own, now, chosen, all(own))).toBeCloseTo(2, 9);
  });
});

describe('belief after answers, by Bayes’ rule', () => {
  const table = matrix(['01234', '10422'], { prior: [0.1, 0.2, 0.3, 0.2, 0.2] });
  it('weighs each flaw by how often it shows the answer', () => {
    expect([...after(table, Float64Array.from(table.prior), 0, 'yes')]).toEqual([
      0,
      0.2,
      0.15,
      expect.closeTo(0.18, 12),
      expect.closeTo(0.02, 12),
    ]);
    expect([...after(table, Float64Array.from([1, 1, 1, 1, 1]), 0, 'no')]).toEqual([
      1,
      0,
      0.5,
      expect.closeTo(0.1, 12),
      expect.closeTo(0.9, 12),
    ]);
  });
  it('can’t tell, and a question that nobody knows, change nothing', () => {
    const plain = [...weigh(table, new Map())];
    expect(plain).toEqual(table.prior);
    expect([...weigh(table, new Map([['question-0', 'unsure' as const]]))]).toEqual(plain);
    expect([...weigh(table, new Map([['gone', 'yes' as const]]))]).toEqual(plain);
    expect([...weigh(table, new Map([['question-1', 'yes' as const]]))][1]).toBe(0);
  });
  it('names what every answer allows, the likeliest first, of equals by name', () => {
    expect(likely(table, Float64Array.from([1, 0, 2, 1, 0]))).toEqual([
      { defect: 'flaw-2', chance: 0.5 },
      { defect: 'flaw-0', chance: 0.25 },
      { defect: 'flaw-3', chance: 0.25 },
    ]);
    expect(likely(table, new Float64Array(5))).toEqual([]);
  });
});
