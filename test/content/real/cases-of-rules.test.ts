/** No rule that guards a step hangs on a fact, or on a value of one, that the proof of cautions does not vary. */
import { expect, it } from 'vitest';
import { compare, factsIn, holds } from '#engine/case/condition.ts';
import { FACTS } from '#engine/model/facts.ts';
import { comparedIn, valuesTold } from '#engine/prove/case-values.ts';
import { conditionsThatMatter } from '#engine/prove/hazard-cases.ts';
import { known } from './knowledge.ts';

const compared = comparedIn(known, conditionsThatMatter(known));
const values = valuesTold(known, compared);
const guards = known.rules.filter(({ hazards }) => hazards.length > 0);
const named = guards.flatMap(({ id, when }) =>
  when ? [...factsIn(when)].map((one) => ({ ...one, id })) : [],
);

it('varies what each compares a fact with: not told, met and not met', () => {
  expect(new Set(named.map(({ fact }) => fact)).size).toBeGreaterThan(7);
  for (const { id, fact, wanted } of named) {
    const truths = new Set((values.get(fact) ?? []).map((value) => compare(wanted, value)));
    const all = fact === 'coat-number' ? ['unknown', 'yes'] : ['unknown', 'yes', 'no'];
    const shape = Object.entries(FACTS).find(([name]) => name === fact)?.[1];
    const namesAll =
      shape?.kind === 'choice' && Array.isArray(wanted) && wanted.length === shape.values.length;
    expect([...truths].sort(), `${id}: ${fact}`).toEqual((namesAll ? ['unknown', 'yes'] : all).sort());
  }
});

it('has for each value of a fact one that no condition tells from it', () => {
  for (const [fact, wanted] of compared) {
    const shape = Object.entries(FACTS).find(([name]) => name === fact)?.[1];
    for (const value of shape?.kind === 'choice' ? shape.values : [])
      expect(
        values.get(fact)?.some((one) => wanted.every((each) => compare(each, one) === compare(each, value))),
        `${fact} ${value}`,
      ).toBe(true);
  }
});

it('looks at the coats on bare wood by which a stop on old paint is taken back', () => {
  expect(values.get('base')).toContain('bare-wood');
  expect(values.get('coat-number')).toEqual([undefined, 1, 2]);
  const when = known.get('rule', 'is-there-old-paint-below').when;
  expect(when && holds(when, (fact) => ({ base: 'bare-wood', 'coat-number': 2 })[fact])).toBe('no');
});
