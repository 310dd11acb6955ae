/** How a plan words a step by what lays the coat and what lies below. That oil is wiped off again: product sheets of drying oils say so; common practice. */
import { expect, it } from 'vitest';
import { laidHow, linesOf } from '../../site/client/schedule/words.ts';
import type { PlanData } from '../../site/shared/plan-data.ts';
import { job, known, outcome, plan } from '../engine/schedule/sheet.ts';

const data = { plan, products: known.products, rules: [], defects: {} } as unknown as PlanData;
const titles = (more: Parameters<typeof job>[0]): readonly string[] => {
  const planned = outcome(job(more));
  if (planned.kind !== 'plan') throw new Error('it is a no');
  return linesOf(job(more), planned, data).map(({ title }) => title);
};

it('has an oil spread, left to soak and wiped off, and never says hands off before that', () => {
  expect(laidHow({ applicator: 'cloth' }, 'oil')).toMatch(/soak .* wipe off/);
  const oil = titles({ base: 'bare-wood', baseHours: undefined, product: 'drying-oil', applicator: 'cloth' });
  expect(oil).toContain('Once it is wiped off, let it dry');
  expect(oil.join()).not.toContain('Hands off');
});

it('tells a cloth and a sprayer nothing of strokes with a brush', () => {
  for (const applicator of ['cloth', 'spray-gun', 'roller'] as const)
    expect(laidHow({ applicator }, 'wipe-on')).not.toContain('Full-length');
  expect(laidHow({ applicator: 'brush' }, 'water-based')).toContain('Full-length');
});

it('takes off only what stands up of a first coat, and sands from the second on', () => {
  const rubs = titles({}).filter((title) => /P320/.test(title));
  expect(rubs).toEqual(['Sand with P320', 'Take off what stands up, P320 by hand', 'Sand with P320']);
});
