/**
 * The belief by Bayes' rule (An Essay towards solving a Problem in the Doctrine of Chances, 1763), on a small invented mind:
 * odds are multiplied by how much oftener one flaw shows the answer than the other, some answers reckoned wrong.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { believe, bent, isFit, nextAsked, toldBy } from '#engine/hear/belief/belief.ts';
import type { ToldFacts } from '#engine/hear/belief/mind.ts';
import { STAGES } from '#engine/model/stage.ts';
import { heardOf, mind } from '../small-mind.ts';

const small = mind();
const chances = (told: ToldFacts, more: object = {}) => [...believe(small, { told, ...more }).chances];
const odds = (list: readonly number[], one: number, other: number) => (list[one] ?? 0) / (list[other] ?? 1);
const sign = (question: string, answer: 'yes' | 'no', sure = 0.9) => ({
  question,
  answer,
  sure,
  rests: [],
  against: [],
});
const fact = (name: string, value: string, sure = 0.9) =>
  ({ fact: name, value, sure, rests: [], against: [] }) as never;
const near = (one: number, other: number): void => {
  expect(one).toBeCloseTo(other, 9);
};
const allNear = (some: readonly number[], others: readonly number[]): void => {
  for (const [at, one] of some.entries()) near(one, others[at] ?? Number.NaN);
};

describe('a chance that some answers are wrong', () => {
  it('is never none nor all, even stays even, and yes and no change places', () => {
    near(bent(0, 0.04), 0.04);
    near(bent(1, 0.04), 0.96);
    near(bent(0.5, 0.04), 0.5);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        (yes, errs) => {
          near(bent(yes, errs) + bent(1 - yes, errs), 1);
        },
      ),
    );
  });
});

describe('the belief', () => {
  it('is how common each flaw is, where nothing is told', () => {
    allNear(chances({}), small.matrix.prior);
    expect(believe(small, { told: {} }).known.size).toBe(0);
  });

  it('adds up to one, and rules nothing out, whatever is told', () => {
    const answers = fc.dictionary(
      fc.constantFrom(...small.matrix.questions),
      fc.constantFrom('yes', 'no', 'unsure'),
    );
    fc.assert(
      fc.property(answers, (told) => {
        const all = chances(told);
        near(
          all.reduce((sum, one) => sum + one, 0),
          1,
        );
        expect(all.every((one) => one > 0)).toBe(true);
        // The order in which it is told does not matter.
        const turned = Object.fromEntries(Object.entries(told).reverse());
        allNear(chances(turned), all);
      }),
      { numRuns: 60 },
    );
  });

  it('moves the odds of two flaws by how often each shows the answer, and of two that show it alike not', () => {
    const before = chances({});
    const yes = chances({ round: 'yes' });
    // Bubbles show it, cracks and dust do not: their odds rise by 96 to 4, one answer in 25 reckoned wrong.
    near(odds(yes, 0, 1) / odds(before, 0, 1), 0.96 / 0.04);
    near(odds(yes, 1, 2), odds(before, 1, 2));
    near(odds(yes, 3, 1) / odds(before, 3, 1), 0.5 / 0.04);
    const no = chances({ round: 'no' });
    near(odds(no, 0, 1) / odds(before, 0, 1), 0.04 / 0.96);
    // Mostly yes is nine in ten, mostly no one.
    const sprayed = chances({ sprayed: 'yes' });
    near(odds(sprayed, 0, 1) / odds(before, 0, 1), bent(0.9, 0.04) / bent(0.1, 0.04));
  });

  it('two answers count each, an answer of both and one that she could not tell count nothing', () => {
    const both = chances({ round: 'yes', long: 'no' });
    near(odds(both, 0, 1) / odds(chances({}), 0, 1), (0.96 / 0.04) ** 2);
    for (const told of [{ round: 'unsure' }, { gone: 'yes' }] as ToldFacts[])
      allNear(chances(told), small.matrix.prior);
    near(odds(chances({ soft: 'yes' }), 0, 2), odds(chances({}), 0, 2));
    expect(believe(small, { told: { round: 'unsure' } }).known.get('round')).toBe('unsure');
  });

  it('a kind that a flaw is not met on makes it less likely, by the same for all', () => {
    const oil = chances({ family: 'oil' });
    near(odds(oil, 0, 2), odds(chances({}), 0, 2));
    const less = odds(oil, 1, 0) / odds(chances({}), 1, 0);
    expect(less).toBeGreaterThan(0);
    expect(less).toBeLessThan(1);
    const wax = chances({ family: 'wax' });
    for (const at of [0, 1, 2]) near(odds(wax, at, 3) / odds(chances({}), at, 3), less);
    // Kinds that are left open count as any of them.
    const open = heardOf({
      among: [{ fact: 'family', values: ['oil', 'wax'], sure: 0.8, rests: [], against: [] }] as never,
    });
    near(odds(chances({}, { heard: open }), 1, 0) / odds(chances({}), 1, 0), less);
    near(odds(chances({}, { heard: open }), 2, 0), odds(chances({}), 2, 0));
    // What is told goes before what is left open.
    near(odds(chances({ family: 'lacquer' }, { heard: open }), 1, 0), odds(chances({}), 1, 0));
    const other = heardOf({
      among: [{ fact: 'piece', values: ['oil'], sure: 0.8, rests: [], against: [] }] as never,
    });
    near(odds(chances({}, { heard: other }), 1, 0), odds(chances({}), 1, 0));
  });

  it('words raise what they speak for, the more the more they do; beside them how common a flaw is counts less', () => {
    const even = chances({}, { words: [0.25, 0.25, 0.25, 0.25] });
    expect(odds(even, 0, 3)).toBeGreaterThan(1);
    expect(odds(even, 0, 3)).toBeLessThan(odds(chances({}), 0, 3));
    const some = chances({}, { words: [0.1, 0.1, 0.1, 0.7] });
    const much = chances({}, { words: [0, 0, 0, 1] });
    expect(some[3] ?? 0).toBeGreaterThan(even[3] ?? 0);
    expect(much[3] ?? 0).toBeGreaterThan(some[3] ?? 0);
    // Words repeat each other: twice the words are less than twice the odds.
    expect(
      odds(chances({}, { words: [0.1, 0.2, 0.1, 0.1] }), 1, 0) /
        odds(chances({}, { words: [0.2, 0.2, 0.1, 0.1] }), 1, 0),
    ).toBeLessThan(2);
    // A flaw that no word speaks for stays possible.
    expect(Math.min(...much)).toBeGreaterThan(0);
  });
});

describe('what a text tells', () => {
  it('is taken as told from seven tenths on', () => {
    const heard = heardOf({ facts: [fact('family', 'oil', 0.7), fact('base', 'stain', 0.69)] });
    expect(toldBy(heard)).toEqual({ family: 'oil' });
    near(odds(chances({}, { heard }), 1, 0), odds(chances({ family: 'oil' }), 1, 0));
    // What was answered goes before what was heard.
    near(odds(chances({ family: 'lacquer' }, { heard }), 1, 0), odds(chances({}), 1, 0));
  });
  it('counts less than an answer, the less the less sure it was heard, and in the same direction', () => {
    const told = odds(chances({ round: 'yes' }), 0, 1);
    const sure = odds(chances({}, { heard: heardOf({ signs: [sign('round', 'yes', 0.9)] }) }), 0, 1);
    const doubted = odds(chances({}, { heard: heardOf({ signs: [sign('round', 'yes', 0.6)] }) }), 0, 1);
    const before = odds(chances({}), 0, 1);
    expect(told).toBeGreaterThan(sure);
    expect(sure).toBeGreaterThan(doubted);
    expect(doubted).toBeGreaterThan(before);
    const no = odds(chances({}, { heard: heardOf({ signs: [sign('round', 'no', 0.9)] }) }), 0, 1);
    expect(no).toBeLessThan(before);
  });
  it('is asked no more once it is sure, and still where it is doubted', () => {
    const known = (sure: number) =>
      believe(small, { told: {}, heard: heardOf({ signs: [sign('long', 'no', sure)] }) }).known;
    expect(known(0.7).get('long')).toBe('no');
    expect(known(0.69).has('long')).toBe(false);
    // What was answered goes before it.
    const heard = heardOf({ signs: [sign('long', 'no', 0.9)] });
    expect(believe(small, { told: { long: 'yes' }, heard }).known.get('long')).toBe('yes');
    near(odds(chances({ long: 'yes' }, { heard }), 0, 1), odds(chances({ long: 'yes' }), 0, 1));
  });
  it('that follows from facts is known, and counts more where the fact was answered than where it was heard', () => {
    const byFact = believe(small, { told: { applicator: 'spray-gun' } });
    expect(byFact.known.get('sprayed')).toBe('yes');
    expect(believe(small, { told: { applicator: 'brush' } }).known.get('sprayed')).toBe('no');
    const heard = heardOf({ facts: [fact('applicator', 'spray-gun')] });
    const byEar = believe(small, { told: {}, heard });
    expect(byEar.known.get('sprayed')).toBe('yes');
    const [before, ear, told] = [chances({}), [...byEar.chances], [...byFact.chances]].map((list) =>
      odds(list, 0, 1),
    );
    expect(ear ?? 0).toBeGreaterThan(before ?? 0);
    expect(told ?? 0).toBeGreaterThan(ear ?? 0);
    // A fact errs less than an answer.
    expect(told ?? 0).toBeGreaterThan(odds(chances({ sprayed: 'yes' }), 0, 1));
  });
});

describe('what may be asked', () => {
  const free = { stage: undefined, waits: new Set<never>() };
  it('is what harms nothing at the stage; where that is not known, nothing that harms a wet film', () => {
    small.questions.forEach(({ safeFrom }, at) => {
      for (const [index, stage] of STAGES.entries())
        expect(isFit(small, at, { ...free, stage })).toBe(index >= STAGES.indexOf(safeFrom));
      expect(isFit(small, at, free)).toBe(safeFrom === 'wet');
    });
    expect(isFit(small, 99, { ...free, stage: 'recoatable' })).toBe(false);
  });
  it('is nothing that waits behind a stop', () => {
    expect(isFit(small, 0, { stage: 'cured', waits: new Set(['look'] as const) })).toBe(false);
    expect(isFit(small, 0, { stage: 'cured', waits: new Set(['touch'] as const) })).toBe(true);
    expect(isFit(small, 2, { stage: 'cured', waits: new Set(['touch'] as const) })).toBe(false);
  });
  it('is what tells most of what is open, and nothing twice', () => {
    const next = (told: ToldFacts, bears: object = {}) =>
      nextAsked(small, believe(small, { told }), { ...free, stage: 'cured', ...bears } as never);
    expect(next({})).toBe('round');
    expect(next({ round: 'no' })).toBe('long');
    expect(next({ round: 'unsure' })).not.toBe('round');
    expect(next({ round: 'no', long: 'no' })).toBe('gray');
    // A question of touch is not asked of a film that sets, nor where touching waits.
    expect(next({ round: 'no', long: 'no' }, { stage: 'setting' })).toBeUndefined();
    expect(next({ round: 'no', long: 'no' }, { waits: new Set(['touch']) })).toBeUndefined();
    expect(next({ round: 'no', long: 'no', gray: 'no' })).toBeUndefined();
  });
  it('leaves out what is far less likely than the first, unless an answer speaks against the first itself', () => {
    const lone = mind({
      matrix: {
        ...small.matrix,
        questions: ['rare', 'round'],
        signs: ['0001', '1000'],
        effort: [1, 1],
        prior: [0.5, 0.24, 0.24, 0.02],
      },
      questions: small.questions.slice(0, 2),
    });
    const open = (told: ToldFacts) => nextAsked(lone, believe(lone, { told }), { ...free, stage: 'cured' });
    // One in fifty against a half: nobody is asked of it while nothing contradicts.
    expect(open({ round: 'unsure' })).toBeUndefined();
    const doubted = mind({
      matrix: {
        ...small.matrix,
        questions: ['rare', 'round', 'other'],
        signs: ['0001', '1000', '0111'],
        effort: [1, 1, 1],
        prior: [0.9, 0.04, 0.04, 0.02],
      },
      questions: small.questions.slice(0, 3),
    });
    const bears = { ...free, stage: 'cured' as const };
    expect(nextAsked(doubted, believe(doubted, { told: { round: 'yes', other: 'yes' } }), bears)).toBe(
      'rare',
    );
  });
});
