/**
 * Of our own twelve, all invented, those that must be refused; the reason is read from the published figure or rule named.
 */
import { expect } from 'vitest';
import type { Outcome, Planned } from '#engine/schedule.ts';
import type { Scenario } from './scenario.ts';
import { job } from './sheet.ts';

const bare = { base: 'bare-wood', baseHours: undefined, tone: 'wood' } as const;
const day = (celsius: number, relativeHumidity = 0.5) => ({ celsius, relativeHumidity });
const SOME = [
  ['water-based-polyurethane', 'brush'],
  ['oil-based-polyurethane', 'brush'],
  ['shellac', 'brush'],
  ['aerosol-lacquer', 'aerosol'],
  ['hardwax-oil', 'cloth'],
] as const;
const plan = (got: Outcome): Planned => {
  if (got.kind === 'no') throw new Error('refused');
  return got;
};

export const OURS_REFUSED: readonly Scenario[] = [
  {
    title: 'water-based over an oil stain of this morning',
    evidence:
      'A maker: 72 h; an older sheet of the same 48 h; others up to a week, in the cold. Read as 72 h, longer below 20 °C. Bare stain is never sanded.',
    plans: [
      {
        job: job({ base: 'stain', baseHours: 6, tone: 'wood' }),
        gets: 'base',
        notBefore: 66,
        because: [/72 hours/],
      },
      {
        job: job({ base: 'stain', baseHours: 72, tone: 'wood', day: day(16), night: day(16) }),
        gets: 'base',
        notBefore: 72 * 2 ** 0.4 - 72,
      },
      {
        job: job({ base: 'stain', baseHours: 168, tone: 'wood' }),
        gets: 'plan',
        check: (got) =>
          expect(plan(got).steps.filter(({ kind, coat }) => kind === 'sand' && coat === 1)).toEqual([]),
      },
    ],
  },
  {
    title: 'wax on a dining table with wet glasses',
    evidence: 'Suppliers: wax stops neither water nor alcohol. Film top coat on tabletops.',
    plans: [
      {
        job: job({ ...bare, product: 'paste-wax', applicator: 'cloth' }, 'dining-table'),
        gets: 'use',
        because: [/rings/, /water-based or oil-based film/],
      },
    ],
  },
  {
    title: 'a shed at 5 °C',
    evidence:
      'Water-based 16–27 °C, oil-based from 13 °C (data sheets). No gas or paraffin heater to mend it.',
    plans: SOME.map(([product, applicator]) => ({
      job: job({ ...bare, product, applicator, day: day(5, 0.7), night: day(2, 0.8) }),
      gets: 'weather' as const,
      rules: ['no-fuel-heater'],
    })),
  },
  {
    title: 'a porch in the sun at 33 °C',
    evidence: 'Never in sun: the skin dries first and bubbles rise. Oil-based to 32 °C (data sheet).',
    plans: SOME.flatMap(([product, applicator]) =>
      [33, 24].map((celsius) => ({
        job: job({ ...bare, product, applicator, day: day(celsius, 0.4), inSun: true }),
        gets: 'weather' as const,
        because: [/sun/, /shade/],
      })),
    ),
  },
  {
    title: 'a cellar at 90 % humidity',
    evidence:
      'Oil-based under 85 % (a data sheet), water-based 40–65 %; fast solvents want a dew gap of 7 °C, and 90 % at 20 °C leaves 1.7 °C.',
    plans: SOME.map(([product, applicator]) => ({
      job: job({ ...bare, product, applicator, day: day(20, 0.9) }),
      gets: 'weather' as const,
    })),
  },
  {
    title: 'a home bar top in shellac',
    evidence: 'Bar top in shellac is the textbook wrong choice: alcohol melts it, water turns it white.',
    plans: [
      {
        job: job({ ...bare, product: 'shellac', wear: 'high', trials: ['water'] }, 'desk'),
        gets: 'use',
        because: [/alcohol/, /water-based/],
      },
    ],
  },
];
