/**
 * No stop waits for a coarse grade. The US agency counts scuff sanding, like scraping, among the work that disturbs old
 * paint (content/sources/safety-epa-disturbs).
 */
import { expect, it } from 'vitest';
import type { Step } from '#engine/model/step.ts';
import { rulesForStep } from '#engine/rules/rules.ts';
import { known } from './knowledge.ts';
import { told } from './told.ts';

const sand = (grit: number): Step => ({ kind: 'sand', grit, say: 'Sand it.' }) as unknown as Step;
const before = (grit: number, age: string) =>
  rulesForStep(known, told({ age }), sand(grit))
    .map(({ id }) => id)
    .sort();

it.each(['before-1993', 'unknown', 'since-1993'])('asks the same before all papers, paint %s', (age) => {
  for (const grit of [120, 280, 400, 2000]) expect(before(grit, age)).toEqual(before(320, age));
});

it('stops before the finest paper on paint of unknown age', () => {
  expect(before(2000, 'unknown')).toContain('lead-before-sanding');
  expect(before(2000, 'since-1993')).not.toContain('lead-before-sanding');
});

it('has no rule that names one hazard of an old film without the other', () => {
  const apart = known.rules.filter(
    ({ hazards }) => hazards.includes('old-film') !== hazards.includes('old-film-in-reach'),
  );
  expect(apart.map(({ id }) => id)).toEqual([]);
});
