/** Every procedure that a remedy can come to, over all that its steps hang on. */
import { expect, it } from 'vitest';
import { factsIn } from '#engine/condition.ts';
import { CONTRADICTIONS } from '#engine/contradictions.ts';
import { type Case, resolve } from '#engine/index.ts';
import { FACTS } from '#engine/model/facts.ts';
import { known } from './knowledge.ts';

type Remedy = (typeof known.remedies)[number];

/** The values that a fact can have: a choice's, an answer's, or one below and one above each bound; `undefined` is not told. */
const valuesOf = (fact: string): readonly (string | undefined)[] => {
  const shape = Object.hasOwn(FACTS, fact) ? FACTS[fact as keyof typeof FACTS] : undefined;
  if (shape?.kind === 'number') return [undefined];
  return [undefined, ...(shape ? shape.values : ['yes', 'no'])];
};

const factsOf = (remedy: Remedy): readonly string[] => [
  ...new Set(
    remedy.steps.flatMap((step) => [
      ...(step.when ? [...factsIn(step.when)].map(({ fact }) => fact) : []),
      ...CONTRADICTIONS.filter((one) => one.step(step)).flatMap(({ told }) => Object.keys(told)),
    ]),
  ),
];

const casesOf = (remedy: Remedy): readonly Case[] =>
  factsOf(remedy).reduce<readonly Case[]>(
    (cases, fact) =>
      cases.flatMap((on) =>
        valuesOf(fact).map((value) => (value ? { ...on, [fact]: { value, how: 'told' as const } } : on)),
      ),
    [{}],
  );

it('never tells a step that something told speaks against', () => {
  const counts = new Map<string, number>();
  const wrong: string[] = [];
  for (const remedy of known.remedies) {
    const procedures = new Set<string>();
    for (const on of casesOf(remedy)) {
      const told = resolve(known, remedy.id, on).map(({ at }) => at);
      procedures.add(told.join(' '));
      for (const at of told)
        for (const one of CONTRADICTIONS)
          for (const [fact, values] of Object.entries(one.told))
            if (
              remedy.steps[at] &&
              one.step(remedy.steps[at]) &&
              [values].flat().includes((on[fact]?.value ?? '') as never)
            )
              wrong.push(`${remedy.id} ${at + 1}, told ${fact} ${on[fact]?.value}: ${one.why}`);
    }
    counts.set(remedy.id, procedures.size);
  }
  const all = [...counts.values()].sort((a, b) => a - b);
  console.log(
    `${counts.size} remedies, ${all.reduce((sum, one) => sum + one, 0)} distinct procedures; ` +
      `median ${all[Math.floor(all.length / 2)]}, most ${all.at(-1)}, only one in ${all.filter((one) => one === 1).length}`,
  );
  expect(wrong).toEqual([]);
  expect(all.filter((one) => one > 1).length).toBeGreaterThan(all.length / 2);
});
