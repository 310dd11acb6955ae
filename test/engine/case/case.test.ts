/**
 * What is known of a piece, and what follows from it: facts that are replaced, answers that other facts give, and when a
 * film may be checked. Invented questions, worked by hand.
 */
import { describe, expect, it } from 'vitest';
import { answerBy, answerOf, canCheck, lookupIn, stageOf } from '#engine/case/answers.ts';
import { type Case, emptyCase, withAnswer, withFact, without } from '#engine/case/case.ts';
import { compare, factsIn, holds, partsOf } from '#engine/case/condition.ts';
import type { ConditionInput } from '#engine/model/condition.ts';
import { STAGES } from '#engine/model/stage.ts';

const told = (facts: Record<string, string | number>): Case =>
  Object.fromEntries(Object.entries(facts).map(([name, value]) => [name, { value, how: 'told' as const }]));

describe('a case', () => {
  it('is never changed: a fact replaces what was known of it, in a new one', () => {
    const first = withFact(emptyCase(), 'stage', 'wet');
    const second = withFact(first, 'stage', 'cured', 'measured');
    expect(emptyCase()).toEqual({});
    expect(first).toEqual({ stage: { value: 'wet', how: 'told' } });
    expect(second).toEqual({ stage: { value: 'cured', how: 'measured' } });
    const third = withAnswer(second, 'round-spots' as never, 'unsure');
    expect(third['round-spots']).toEqual({ value: 'unsure', how: 'answered' });
    expect(without(third, 'stage')).toEqual({ 'round-spots': { value: 'unsure', how: 'answered' } });
    expect(without(third, 'gone')).toEqual(third);
    expect(second).toEqual({ stage: { value: 'cured', how: 'measured' } });
  });
});

describe('the stage of the film', () => {
  it('is the one that is told, else that of a skin where it is overdue', () => {
    for (const stage of STAGES) {
      expect(stageOf(told({ stage }))).toBe(stage);
      expect(stageOf(told({ stage, overdue: 'yes' }))).toBe(stage);
    }
    expect(stageOf(told({ overdue: 'yes' }))).toBe('dry-to-touch');
    expect(stageOf(told({ overdue: 'no' }))).toBeUndefined();
    expect(stageOf(told({ stage: 'soaked' }))).toBeUndefined();
    expect(stageOf({})).toBeUndefined();
  });
});

const rule = (when: ConditionInput, answer: 'yes' | 'no') => ({ when, answer });
/** `thick` follows from `runs`, `runs` from a spray gun; two follow from each other. */
const QUESTIONS: Record<string, { known: ReturnType<typeof rule>[]; 'safe-from': string }> = {
  thick: { known: [rule({ runs: 'yes' }, 'yes'), rule({ runs: 'no' }, 'no')], 'safe-from': 'recoatable' },
  runs: {
    known: [rule({ applicator: 'spray-gun' }, 'yes'), rule({ applicator: ['cloth', 'pad'] }, 'no')],
    'safe-from': 'wet',
  },
  egg: { known: [rule({ hen: 'yes' }, 'yes')], 'safe-from': 'setting' },
  hen: { known: [rule({ egg: 'yes' }, 'yes'), rule({ sheen: 'flat' }, 'yes')], 'safe-from': 'wet' },
  bare: { known: [], 'safe-from': 'cured' },
};
const known = {
  has: (kind: string, id: string) => kind === 'question' && id in QUESTIONS,
  get: (_: string, id: string) => QUESTIONS[id],
} as never;
const answer = (facts: Record<string, string | number>, question: string) =>
  answerOf(known, told(facts), question);

describe('an answer', () => {
  it('is the one that was given, before all that follows', () => {
    expect(answer({ thick: 'no', applicator: 'spray-gun' }, 'thick')).toBe('no');
    expect(answer({ thick: 'yes', applicator: 'cloth' }, 'thick')).toBe('yes');
  });
  it('follows from a fact, and from an answer that follows from one', () => {
    expect(answer({ applicator: 'spray-gun' }, 'runs')).toBe('yes');
    expect(answer({ applicator: 'pad' }, 'runs')).toBe('no');
    expect(answer({ applicator: 'spray-gun' }, 'thick')).toBe('yes');
    expect(answer({ applicator: 'cloth' }, 'thick')).toBe('no');
    expect(answer({ applicator: 'brush' }, 'thick')).toBeUndefined();
    expect(answer({}, 'thick')).toBeUndefined();
  });
  it('that she could not tell is told by what comes later, else stays a doubt', () => {
    expect(answer({ thick: 'unsure', applicator: 'cloth' }, 'thick')).toBe('no');
    expect(answer({ thick: 'unsure' }, 'thick')).toBe('unsure');
    expect(answer({ bare: 'unsure' }, 'bare')).toBe('unsure');
    expect(answer({ bare: 'perhaps' }, 'bare')).toBeUndefined();
    expect(answer({ gone: 'unsure' }, 'gone')).toBe('unsure');
    expect(answer({ gone: 'yes' }, 'gone')).toBe('yes');
  });
  it('that follows in a circle is not known, unless something outside of it tells', () => {
    expect(answer({}, 'egg')).toBeUndefined();
    expect(answer({}, 'hen')).toBeUndefined();
    expect(answer({ sheen: 'flat' }, 'hen')).toBe('yes');
    expect(answer({ sheen: 'flat' }, 'egg')).toBe('yes');
    expect(answer({ egg: 'yes' }, 'hen')).toBe('yes');
  });
  it('is asked of no rules while it is asked for', () => {
    expect(
      answerBy(
        () => [rule({}, 'yes')],
        () => undefined,
        'a',
        ['a'],
      ),
    ).toBeUndefined();
    expect(
      answerBy(
        () => [rule({}, 'yes')],
        () => undefined,
        'a',
        ['b'],
      ),
    ).toBe('yes');
    expect(
      answerBy(
        () => undefined,
        () => undefined,
        'a',
      ),
    ).toBeUndefined();
  });
  it('is looked up like a fact', () => {
    const lookup = lookupIn(known, told({ applicator: 'spray-gun', sheen: 'flat' }));
    expect(lookup('thick')).toBe('yes');
    expect(lookup('sheen')).toBe('flat');
    expect(lookup('gone')).toBeUndefined();
    expect(lookup('bare')).toBeUndefined();
  });
});

describe('a check', () => {
  it('harms nothing from its stage on, and is forbidden by none that is not known', () => {
    for (const question of Object.keys(QUESTIONS)) {
      const from = STAGES.indexOf(QUESTIONS[question]?.['safe-from'] as never);
      for (const [at, stage] of STAGES.entries())
        expect(canCheck(known, told({ stage }), question), `${question} ${stage}`).toBe(at >= from);
      expect(canCheck(known, {}, question)).toBe(true);
    }
    expect(canCheck(known, told({ overdue: 'yes' }), 'thick')).toBe(false);
    expect(canCheck(known, told({ overdue: 'yes' }), 'egg')).toBe(true);
  });
});

describe('what a condition wants of one fact', () => {
  it('is one value, one of some, or a number between bounds that it may not touch', () => {
    expect(compare('a', 'a')).toBe('yes');
    expect(compare('a', 'b')).toBe('no');
    expect(compare(['a', 'b'], 'b')).toBe('yes');
    expect(compare(['a', 'b'], 'c')).toBe('no');
    expect(compare([], 'c')).toBe('no');
    for (const [value, wanted] of [
      [9, 'no'],
      [10, 'no'],
      [10.1, 'yes'],
      [19.9, 'yes'],
      [20, 'no'],
      [21, 'no'],
    ] as const)
      expect(compare({ above: 10, below: 20 }, value)).toBe(wanted);
    expect(compare({ above: 10 }, 1e9)).toBe('yes');
    expect(compare({ above: 10 }, 10)).toBe('no');
    expect(compare({ below: 10 }, -1e9)).toBe('yes');
    expect(compare({ below: 10 }, 10)).toBe('no');
    expect(compare({ above: 0 }, 1)).toBe('yes');
    expect(compare({ below: 0 }, -1)).toBe('yes');
    expect(compare({ below: 0 }, 1)).toBe('no');
  });
  it('is unknown where the fact is, where she could not tell, and where a text stands for a number', () => {
    for (const wanted of ['a', ['a'], { above: 1 }]) {
      expect(compare(wanted, undefined)).toBe('unknown');
      expect(compare(wanted, 'unsure')).toBe('unknown');
    }
    expect(compare({ above: 1 }, '5')).toBe('unknown');
  });
});

describe('a condition', () => {
  /** Kleene's strong three values (Journal of Symbolic Logic 3, 1938): false is the least and true the greatest. */
  const RANK = { no: 0, unknown: 1, yes: 2 } as const;
  type Truth = keyof typeof RANK;
  const values: readonly (readonly [string | undefined, Truth])[] = [
    ['t', 'yes'],
    ['f', 'no'],
    [undefined, 'unknown'],
  ];
  const least = (...all: readonly Truth[]) => Math.min(...all.map((one) => RANK[one]));
  const most = (...all: readonly Truth[]) => Math.max(...all.map((one) => RANK[one]));
  it('and, or and not are least, greatest and the other way round, over all values of three facts', () => {
    for (const [a, A] of values)
      for (const [b, B] of values)
        for (const [c, C] of values) {
          const rank = (condition: ConditionInput) => RANK[holds(condition, (fact) => ({ a, b, c })[fact])];
          expect(rank({ a: 't', b: 't', c: 't' })).toBe(least(A, B, C));
          expect(rank({ any: [{ a: 't' }, { b: 't' }, { c: 't' }] })).toBe(most(A, B, C));
          expect(rank({ not: { a: 't', b: 't' } })).toBe(2 - least(A, B));
          expect(rank({ a: 't', any: [{ b: 't' }, { not: { c: 't' } }] })).toBe(
            Math.min(RANK[A], Math.max(RANK[B], 2 - RANK[C])),
          );
        }
    expect(holds({}, () => undefined)).toBe('yes');
    expect(holds({ any: [] }, () => 't')).toBe('no');
    expect(holds({ a: undefined } as never, () => undefined)).toBe('yes');
  });
  it('names every fact that it speaks of, with its values and its place', () => {
    const condition: ConditionInput = {
      a: 'x',
      b: ['y', 'z'],
      c: { above: 3 },
      any: [{ d: 'w' }, { not: { e: ['v'] } }],
      not: { f: 'u' },
    };
    expect([...factsIn(condition)]).toEqual([
      { fact: 'a', wanted: 'x', values: ['x'], path: ['a'] },
      { fact: 'b', wanted: ['y', 'z'], values: ['y', 'z'], path: ['b'] },
      { fact: 'c', wanted: { above: 3 }, values: [], path: ['c'] },
      { fact: 'd', wanted: 'w', values: ['w'], path: ['any', 0, 'd'] },
      { fact: 'e', wanted: ['v'], values: ['v'], path: ['any', 1, 'not', 'e'] },
      { fact: 'f', wanted: 'u', values: ['u'], path: ['not', 'f'] },
    ]);
    expect(partsOf(condition).map(({ kind }) => kind)).toEqual(['fact', 'fact', 'fact', 'any', 'not']);
    expect(partsOf(condition)).toBe(partsOf(condition));
  });
});
