/** How a plan words a step by what lays the coat and what lies below. That oil is wiped off again: product sheets of drying oils say so; common practice. */
import { expect, it } from 'vitest';
import type { Job } from '#engine/schedule.ts';
import { laidHow, linesOf, mixedHow } from '../../site/client/schedule/words.ts';
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

it('has a spray can shaken, wax taken as it is, and all else stirred', () => {
  const short = (applicator: 'aerosol' | 'cloth' | 'brush', family: Parameters<typeof mixedHow>[1]) =>
    mixedHow({ applicator, sheen: 'satin' }, family).short;
  expect(short('aerosol', 'lacquer')).toMatch(/^Shake/);
  expect(short('cloth', 'wax')).toBe('');
  expect(short('brush', 'lacquer')).toMatch(/^Stir/);
  const notes = (more: Partial<Job>) => {
    const one = job({ base: 'bare-wood', tone: 'wood', trials: [], ...more });
    const got = outcome(one);
    if (got.kind !== 'plan') throw new Error('it is a no');
    return linesOf(one, got, data).find(({ step }) => step.kind === 'coat')?.notes ?? [];
  };
  const can = notes({ product: 'aerosol-lacquer', applicator: 'aerosol' }).join(' ');
  expect([/Shake the can/.test(can), /Stir|strain/.test(can)]).toEqual([true, false]);
  expect(notes({ product: 'soft-wax', applicator: 'cloth' })).not.toContain('');
});

it('takes off only what stands up of a first coat, and sands from the second on', () => {
  const rubs = (hardener: Job['hardener']) => titles({ hardener }).filter((title) => /P320/.test(title));
  expect(rubs('none')).toEqual(['Sand with P320', 'Take off what stands up, P320 by hand', 'Sand with P320']);
  // Nobody said: of two parts it is not sanded, and of the base none is.
  expect(rubs(undefined)).toEqual([
    'Sand with P320',
    'Take off what stands up, P320 by hand, if it is of one part',
    'Sand with P320, if it is of one part',
  ]);
  expect(rubs('isocyanate')).toEqual(['Sand with P320']);
  expect(
    titles({ hardener: 'isocyanate' }).filter((title) => title === 'Do not sand it: wipe it, and let it dry'),
  ).toHaveLength(2);
});

it('has wax wiped back as it is laid and buffed within her hours of that day', () => {
  const of = { base: 'chalk-paint', product: 'soft-wax', applicator: 'cloth' } as const;
  const got = titles(of);
  expect(got.filter((title) => /^Coat|^Buff/.test(title))).toEqual([
    'Coat 1 of 2',
    'Buff it once it is dull',
    'Coat 2 of 2',
    'Buff it once it is dull',
  ]);
  expect(laidHow({ applicator: 'cloth' }, 'wax')).toMatch(/wipe each part back at once/);
  const late = outcome(job({ ...of, start: 17 * 3_600_000 }));
  if (late.kind !== 'plan') throw new Error('it is a no');
  for (const { kind, from, to } of late.steps) {
    const hour = (at: number) => (at / 3_600_000) % 24;
    if (kind === 'buff') expect([hour(from) >= 9, hour(to) <= 18]).toEqual([true, true]);
  }
  const [coat, buff] = ['coat', 'buff'].map((kind) => late.steps.find((step) => step.kind === kind));
  // Dull after 10 to 30 minutes (wax-w8), 30 to 60 by a museum agency (safety-s69).
  expect(((buff?.from ?? 0) - (coat?.to ?? 0)) / 60_000).toBeLessThanOrEqual(60);
});

it('tells of oily cloths in one line at every coat after the first, and of none where nothing heats', () => {
  const ragsAt = (product: string) => {
    const of = job({ base: 'bare-wood', baseHours: undefined, product });
    const planned = outcome(of);
    if (planned.kind !== 'plan') throw new Error('it is a no');
    return linesOf(of, planned, data).flatMap(({ step, notes }) =>
      step.kind === 'coat' && notes.some((note) => /[Oo]ily rags/.test(note)) ? [step.coat] : [],
    );
  };
  expect(ragsAt('oil-based-polyurethane')).toEqual([1, 2, 3]);
  expect(ragsAt('water-based-polyurethane')).toEqual([]);
});
