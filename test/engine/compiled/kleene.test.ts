/**
 * Conditions as clauses and facts as codes, against Kleene's strong logic of three values written out (S. C. Kleene,
 * Introduction to Metamathematics, 1952, § 64): not, and, or over yes, no and unknown.
 */
import { describe, expect, it } from 'vitest';
import { compare, holds, type Truth } from '#engine/case/condition.ts';
import { clausesOf } from '#engine/compiled/clauses.ts';
import { codedFact, codeOf, codesOf } from '#engine/compiled/fact-codes.ts';
import type { ConditionInput, Wanted } from '#engine/model/condition.ts';

const NOT: Readonly<Record<Truth, Truth>> = { yes: 'no', unknown: 'unknown', no: 'yes' };
const ORDER: readonly Truth[] = ['no', 'unknown', 'yes'];
const least = (all: readonly Truth[]) => ORDER[Math.min(2, ...all.map((one) => ORDER.indexOf(one)))];
const most = (all: readonly Truth[]) => ORDER[Math.max(0, ...all.map((one) => ORDER.indexOf(one)))];

/** By the tables of the book: `and` is the least of its parts, `or` the greatest. */
const byTables = (condition: ConditionInput, on: (fact: string) => string | undefined): Truth =>
  least(
    Object.entries(condition).flatMap(([name, wanted]): Truth[] => {
      if (wanted === undefined) return [];
      if (name === 'not') return [NOT[byTables(wanted as ConditionInput, on)]];
      if (name === 'any') return [most((wanted as ConditionInput[]).map((one) => byTables(one, on))) ?? 'no'];
      const value = on(name);
      return [value === undefined ? 'unknown' : [wanted].flat().includes(value) ? 'yes' : 'no'];
    }),
  ) as Truth;

const CONDITIONS: readonly ConditionInput[] = [
  {},
  { family: 'oil' },
  { family: ['oil', 'wax'] },
  { family: 'oil', base: 'stain' },
  { not: { family: 'oil' } },
  { not: { family: 'oil', base: 'stain' } },
  { any: [{ family: 'oil' }, { base: 'stain' }] },
  {
    any: [
      { family: 'oil', base: 'stain' },
      { base: 'wax', family: 'wax' },
    ],
  },
  { not: { any: [{ family: 'oil' }, { base: 'stain' }] } },
  {
    not: {
      any: [
        { family: 'oil', base: 'stain' },
        { base: 'wax', family: 'wax' },
      ],
    },
  },
  { any: [{ not: { family: 'oil' } }, { base: 'stain' }], family: ['oil', 'wax'] },
  { not: { not: { family: 'oil', base: 'wax' } } },
  { family: undefined, base: 'stain' } as ConditionInput,
];
const FAMILY = [undefined, 'oil', 'wax', 'shellac'];
const BASE = [undefined, 'stain', 'wax', 'laminate'];

describe('a condition', () => {
  it.each(CONDITIONS.map((condition) => [condition] as const))('%o', (condition) => {
    for (const family of FAMILY)
      for (const base of BASE) {
        const on = (fact: string) => (fact === 'family' ? family : base);
        const wanted = byTables(condition, on);
        expect(holds(condition, on)).toBe(wanted);
        const clauses = clausesOf(condition).map((clause) =>
          most(
            clause.map(({ fact, wanted: value, negated }) => {
              const truth = compare(value, on(fact));
              return negated ? NOT[truth] : truth;
            }),
          ),
        );
        expect(least(clauses as Truth[])).toBe(wanted);
      }
  });
});

describe('a comparison', () => {
  it.each<[Wanted, string | number | undefined, Truth]>([
    ['oil', 'oil', 'yes'],
    ['oil', 'wax', 'no'],
    ['oil', undefined, 'unknown'],
    ['oil', 'unsure', 'unknown'],
    [['oil', 'wax'], 'wax', 'yes'],
    [['oil', 'wax'], 'shellac', 'no'],
    [{ above: 10 }, 10, 'no'],
    [{ above: 10 }, 10.1, 'yes'],
    [{ below: 10 }, 10, 'no'],
    [{ below: 10 }, 9.9, 'yes'],
    [{ above: 10, below: 20 }, 15, 'yes'],
    [{ above: 10, below: 20 }, 20, 'no'],
    [{ above: 10 }, 'warm', 'unknown'],
    [{ above: 10 }, undefined, 'unknown'],
  ])('%o of %s: %s', (wanted, value, truth) => {
    expect(compare(wanted, value)).toBe(truth);
  });
});

describe('the code of a fact', () => {
  const family = codedFact('family', ['oil', ['wax', 'oil'], 'unsure']);
  const hours = codedFact('hours', [{ above: 24 }, { below: 72, above: 8 }]);

  it('is 0 where it is not known, one for each value that is named, and one for all others', () => {
    expect(codeOf(family, undefined)).toBe(0);
    expect(codeOf(family, 'unsure')).toBe(0);
    expect([codeOf(family, 'oil'), codeOf(family, 'wax')].sort()).toEqual([1, 2]);
    expect(codeOf(family, 'shellac')).toBe(3);
    expect(codeOf(family, 7)).toBe(3);
    expect(codeOf(hours, undefined)).toBe(0);
  });

  it('of a number tells bounds and the gaps between apart, in rising order', () => {
    expect(hours.bounds).toEqual([8, 24, 72]);
    const codes = [7, 8, 9, 24, 25, 72, 73].map((value) => codeOf(hours, value));
    expect(codes).toEqual([...codes].sort((a, b) => a - b));
    expect(new Set(codes).size).toBe(7);
    expect(codeOf(hours, 7)).toBe(codeOf(hours, -5));
    expect(codeOf(hours, 9)).toBe(codeOf(hours, 23));
    expect(codeOf(hours, 73)).toBe(codeOf(hours, 9000));
    expect(codeOf(hours, 'soon')).toBeLessThan(Math.min(...codes));
  });

  it('has an example of each class, by code', () => {
    for (const fact of [family, hours])
      expect(fact.examples.map((example) => codeOf(fact, example))).toEqual(fact.examples.map((_, at) => at));
    expect(family.examples).toHaveLength(4);
    expect(hours.examples).toHaveLength(1 + 1 + 7);
  });

  it('stands in the order of the facts', () => {
    const on = (name: string) => (name === 'family' ? 'wax' : 24);
    expect([...codesOf([family, hours], on)]).toEqual([codeOf(family, 'wax'), codeOf(hours, 24)]);
  });
});
