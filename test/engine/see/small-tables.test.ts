/**
 * The search on small tables: what it costs, what stands near, and which stops are written out, beside a second way to
 * reckon each, written here in the open. Tables drawn at random, invented.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Answer } from '#engine/case/case.ts';
import { nearMisses } from '#engine/see/belief.ts';
import type { SignMatrix } from '#engine/see/matrix.ts';
import { nearestSeeAddress, readSeeAddress, type SeeNode, seeNodes } from '#engine/see/nodes.ts';
import { see } from '#engine/see/see.ts';
import { firstInsteadOf, survey } from '#engine/see/survey.ts';

/** no, yes, either, mostly yes, mostly no: how often a flaw shows yes. */
const CHANCE = [0, 1, 0.5, 0.9, 0.1];
const table = (signs: readonly string[], prior: readonly number[]): SignMatrix => ({
  defects: prior.map((_, at) => `flaw-${String.fromCharCode(97 + at)}`),
  questions: signs.map((_, at) => `is-it-${at}`),
  prior,
  effort: signs.map(() => 1),
  signs,
});

const chanceOf = ({ signs, questions }: SignMatrix, question: string, flaw: number, answer: Answer) => {
  const yes = CHANCE[Number(signs[questions.indexOf(question)]?.[flaw])] ?? Number.NaN;
  return answer === 'yes' ? yes : 1 - yes;
};

const shares = (weights: readonly number[]) => {
  const sum = weights.reduce((all, one) => all + one, 0);
  return weights.map((one) => one / sum);
};

const tables = (codes: number, most = 5) =>
  fc
    .tuple(fc.integer({ min: 2, max: 6 }), fc.integer({ min: 1, max: most }))
    .chain(([flaws, questions]) =>
      fc.record({
        signs: fc.array(
          fc
            .array(fc.integer({ min: 0, max: codes }), { minLength: flaws, maxLength: flaws })
            .map((row) => row.join('')),
          { minLength: questions, maxLength: questions },
        ),
        weights: fc.array(fc.integer({ min: 1, max: 5 }), { minLength: flaws, maxLength: flaws }),
      }),
    )
    .map(({ signs, weights }) => table(signs, shares(weights)));

type Answers = readonly (readonly [string, Answer])[];
/** Every way to the end with only yes and no, with the share of searches for each flaw that take it. */
const ways = (matrix: SignMatrix, seen: Answers = []): { seen: Answers; of: number[] }[] => {
  const of = matrix.prior.map((share, flaw) =>
    seen.reduce((product, [question, answer]) => product * chanceOf(matrix, question, flaw, answer), share),
  );
  if (!of.some((share) => share > 0)) return [];
  const { question } = see(matrix, new Map(seen));
  return question === undefined
    ? [{ seen, of }]
    : (['yes', 'no'] as const).flatMap((answer) => ways(matrix, [...seen, [question, answer]]));
};

const sum = (all: readonly number[]) => all.reduce((total, one) => total + one, 0);

describe('what a search costs', () => {
  it('is what all ways through it cost, each as often as it is gone', () => {
    fc.assert(
      fc.property(tables(4), (matrix) => {
        const all = ways(matrix);
        const figures = survey(matrix);
        expect(figures.questions).toBeCloseTo(sum(all.map(({ seen, of }) => seen.length * sum(of))), 9);
        expect(figures.worst).toBe(Math.max(...all.map(({ seen }) => seen.length)));
        const first = matrix.defects.map((_, flaw) =>
          sum(all.map(({ of }) => ((of[flaw] ?? 0) >= Math.max(...of) - 1e-12 ? (of[flaw] ?? 0) : 0))),
        );
        expect(figures.rightFirst).toBeCloseTo(sum(first), 9);
        expect(figures.neverFirst).toEqual(matrix.defects.filter((_, flaw) => first[flaw] === 0));
        // Shannon 1948: no set of yes and no does with fewer on average, whatever the order.
        expect(figures.entropy).toBeCloseTo(-sum(matrix.prior.map((one) => one * Math.log2(one))), 9);
      }),
      { numRuns: 60 },
    );
  });

  it('of four flaws that two questions part is two, and by the alphabet 2.25', () => {
    const figures = survey(table(['0011', '0101'], [0.25, 0.25, 0.25, 0.25]));
    expect(figures).toMatchObject({ entropy: 2, questions: 2, worst: 2, fixedOrder: 2, neverFirst: [] });
    expect(figures.rightFirst).toBeCloseTo(1, 9);
    // Is it a? b? c? What is left then is d: 1, 2, 3 and 3 questions.
    expect(figures.alphabetical).toBeCloseTo((1 + 2 + 3 + 3) / 4, 9);
  });

  it('in one fixed order skips what tells nothing any more', () => {
    // The first part of the flaws needs the second question, the other the third; neither needs both.
    const figures = survey(
      table(['000111', '001222', '222001', '010222', '222010'], shares([1, 1, 1, 1, 1, 1])),
    );
    expect(figures.fixedOrder).toBeGreaterThanOrEqual(figures.questions - 1e-9);
    expect(figures.fixedOrder).toBeLessThan(4);
  });

  it('has a flaw never first that another hides', () => {
    const figures = survey(table(['012', '100'], [0.3, 0.6, 0.1]));
    // Where the second shows yes or no alike, the third, which is rarer, comes behind it in each way.
    const all = ways(table(['012', '100'], [0.3, 0.6, 0.1]));
    expect(all.every(({ of }) => (of[2] ?? 0) < Math.max(...of))).toBe(true);
    expect(figures.neverFirst).toEqual(['flaw-c']);
    expect(figures.rightFirst).toBeLessThan(1);
  });
});

describe('the flaw that comes next to one', () => {
  it('is none where all others are ruled out, and the commonest of those that are not', () => {
    const parted = table(['0011', '0101'], [0.25, 0.25, 0.25, 0.25]);
    for (const flaw of parted.defects) expect(firstInsteadOf(parted, flaw)).toBeUndefined();
    // a and b show the same of all that is asked; c is apart.
    const alike = table(['001', '002'], [0.5, 0.2, 0.3]);
    expect(firstInsteadOf(alike, 'flaw-a')).toBe('flaw-b');
    expect(firstInsteadOf(alike, 'flaw-b')).toBe('flaw-a');
    expect(firstInsteadOf(alike, 'flaw-c')).toBeUndefined();
  });
  it('is found by answers as the flaw mostly shows them', () => {
    // Mostly yes (3) goes the way of yes.
    const yes = table(['3100', '0001'], [0.3, 0.3, 0.2, 0.2]);
    expect(firstInsteadOf(yes, 'flaw-a')).toBe('flaw-b');
    // Mostly no (4) goes the way of no.
    const no = table(['4011', '0001'], [0.3, 0.3, 0.2, 0.2]);
    expect(firstInsteadOf(no, 'flaw-a')).toBe('flaw-b');
  });
});

describe('what stands near, since people err', () => {
  const ERRS = 0.03;
  /** Those against which so many answers speak, likeliest first, one answer in 33 reckoned wrong. */
  const against = (matrix: SignMatrix, seen: ReadonlyMap<string, Answer>, count: number) => {
    const told = [...seen].filter(
      ([question, answer]) => answer !== 'unsure' && matrix.questions.includes(question),
    );
    return matrix.defects
      .map((defect, flaw) => ({
        defect,
        missed: told.filter(([question, answer]) => chanceOf(matrix, question, flaw, answer) === 0),
        weight: told.reduce((product, [question, answer]) => {
          const right = chanceOf(matrix, question, flaw, answer);
          return product * (right * (1 - ERRS) + (1 - right) * ERRS);
        }, matrix.prior[flaw] ?? 0),
      }))
      .filter(({ missed }) => missed.length === count)
      .sort((one, two) => two.weight - one.weight || one.defect.localeCompare(two.defect, 'en'))
      .map(({ defect, missed: [one, two] }) => ({ defect, question: one?.[0], ...(two && { and: two[0] }) }));
  };

  it('is first what one answer speaks against, then what two do, likeliest first', () => {
    const answers = fc.array(fc.constantFrom<Answer>('yes', 'no', 'unsure'), {
      minLength: 5,
      maxLength: 5,
    });
    fc.assert(
      fc.property(tables(4), answers, (matrix, given) => {
        const seen = new Map<string, Answer>([
          ['no-such-question', 'yes'],
          ...matrix.questions.map((question, at): [string, Answer] => [question, given[at] ?? 'unsure']),
        ]);
        expect(nearMisses(matrix, seen)).toEqual([...against(matrix, seen, 1), ...against(matrix, seen, 2)]);
      }),
      { numRuns: 120 },
    );
  });

  it('lists no more than 24 where two speak against them, and all where one does', () => {
    const seen = new Map<string, Answer>([
      ['is-it-0', 'yes'],
      ['is-it-1', 'yes'],
    ]);
    const both = table(['0'.repeat(30), '0'.repeat(30)], Array(30).fill(1 / 30));
    expect(nearMisses(both, seen)).toHaveLength(24);
    const one = table(['0'.repeat(30), `${'1'.repeat(27)}000`], Array(30).fill(1 / 30));
    const near = nearMisses(one, seen);
    expect(near).toHaveLength(27);
    expect(near.every(({ and }) => and === undefined)).toBe(true);
  });
});

describe('the stops that are written out', () => {
  const matrix = table(['00001111', '00110011', '01010101'], Array(8).fill(1 / 8));
  const nodes: readonly SeeNode[] = [...seeNodes(matrix)];
  const doubts = (seen: Answers) => seen.filter(([, answer]) => answer === 'unsure').length;

  it('are all ways of yes and no, and those with one can’t tell', () => {
    // Three questions: 1 + 2 + 4 + 8 stops without a doubt; a doubt stands for one of the answers of a way, so with
    // one there are 1 of one answer, 2 × 2 of two, 3 × 4 of three.
    expect(nodes.filter(({ seen }) => doubts(seen) === 0)).toHaveLength(15);
    expect(nodes.filter(({ seen }) => doubts(seen) === 1)).toHaveLength(1 + 4 + 12);
    expect(nodes).toHaveLength(32);
    expect(new Set(nodes.map(({ address }) => address.join('/'))).size).toBe(32);
    for (const { seen, mayDoubt } of nodes) expect(mayDoubt).toBe(doubts(seen) === 0);
  });

  it('stand where the search stands after the same answers', () => {
    for (const { seen, sighting } of nodes) {
      expect(sighting).toEqual(see(matrix, new Map(seen)));
      expect(sighting.likely.length).toBe(8 / 2 ** (seen.length - doubts(seen)));
      expect(new Set(seen.map(([question]) => question)).size).toBe(seen.length);
    }
  });

  it('have an address each that leads back to it', () => {
    expect(nodes[0]?.address).toEqual([]);
    for (const { address, seen } of nodes) {
      expect(address).toEqual(seen.map(([question, answer]) => `${question}-${answer}`));
      expect([...readSeeAddress(matrix, address)]).toEqual(seen);
      expect(nearestSeeAddress(matrix, readSeeAddress(matrix, address))).toEqual(address);
    }
  });

  it('are come to from any answers as far as the plan asks for them', () => {
    const [first = '', second = '', third = ''] = (
      nodes.find(({ seen }) => seen.length === 3)?.seen ?? []
    ).map(([question]) => question);
    const nearest = (...seen: [string, Answer][]) => nearestSeeAddress(matrix, new Map(seen));
    expect(nearest([third, 'yes'])).toEqual([]);
    expect(nearest([second, 'no'], [first, 'yes'])).toEqual([`${first}-yes`, `${second}-no`]);
    // A second can't tell has no page.
    expect(nearest([first, 'unsure'], [second, 'unsure'], [third, 'yes'])).toHaveLength(1);
    expect(
      readSeeAddress(matrix, [`${first}-perhaps`, 'gone-yes', 'x', `-${first}-yes`, `${first}-yes-`]).size,
    ).toBe(0);
  });
});
