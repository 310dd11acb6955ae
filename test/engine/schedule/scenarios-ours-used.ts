/**
 * Of our own twelve, all invented, those that are planned with care; what must come of each is read from the published
 * figure or rule named.
 */
import { expect } from 'vitest';
import type { Outcome, Planned } from '#engine/schedule.ts';
import type { Scenario } from './scenario.ts';
import { DAY, HOUR, job } from './sheet.ts';

const bare = { base: 'bare-wood', baseHours: undefined, tone: 'wood' } as const;
const day = (celsius: number, relativeHumidity = 0.5) => ({ celsius, relativeHumidity });
const WEEKENDS = { from: 9 * 60, to: 18 * 60, days: [true, false, false, false, false, false, true] };
const plan = (got: Outcome): Planned => {
  if (got.kind === 'no') throw new Error('refused');
  return got;
};

export const OURS_USED: readonly Scenario[] = [
  {
    title: 'a toy box for a child of two',
    evidence:
      'Four things to settle (EN 71-3, 16 CFR 1303, cured, no trapping lid); the figure of the maker, never less than 30 days.',
    plans: [
      {
        job: job({ tone: 'light' }, 'toy-box'),
        gets: 'plan',
        coats: [4, 5],
        rules: ['childs-item', 'cure-before-use'],
        care: [/EN 71-3/],
        handOver: 30,
        fullUse: 30,
      },
      { job: job({ base: 'old-finish', age: 'before-1993' }, 'toy-box'), gets: 'rule', because: [/lead/] },
      {
        job: job({ product: 'oil-based-polyurethane', tone: 'light' }, 'toy-box'),
        gets: 'plan',
        care: [/amber/],
        rules: ['oily-rags'],
        handOver: 30,
      },
    ],
  },
  {
    title: 'a chopping board, bare maple; then one that was painted',
    evidence:
      'No finish makes a cutting surface; a product declared for food, 30 days at the least; old or colored coats below: not for food. A care in the source, so planned with it.',
    plans: [
      {
        job: job({
          ...bare,
          product: 'hardwax-oil',
          applicator: 'cloth',
          kind: 'food-surface',
          trials: ['food'],
        }),
        gets: 'plan',
        rules: ['food-surface', 'oily-rags'],
        care: [/cutting surface/],
        handOver: 30,
      },
      {
        job: job({ kind: 'food-surface', trials: ['food'] }),
        gets: 'plan',
        rules: ['food-surface'],
        care: [/[Oo]ld or colored coats/],
        handOver: 30,
      },
    ],
  },
  {
    title: 'lacquer in heavy coats, five asked for by gun, thick from the can',
    evidence:
      'All lacquer together 75–100 µm dry, or it cold-checks; three to five thin coats (a maker, a handbook).',
    plans: [
      {
        job: job({ product: 'sprayed-lacquer', applicator: 'spray-gun', wear: 'high', day: day(22, 0.4) }),
        gets: 'plan',
        coats: [2, 5],
        rules: ['vapor-and-flame-when-spraying', 'spray-room'],
        check: (got) => expect(got.build?.total.to).toBeLessThanOrEqual(100 + 1e-6),
      },
      {
        // The can wins, and it is told: 8 × 1000 ÷ 5 m²/L × 0.3 = 480 µm.
        job: job({
          product: 'sprayed-lacquer',
          applicator: 'spray-gun',
          day: day(22, 0.4),
          label: { minutes: {}, coats: 8, squareMetersPerLiter: 5, volumeSolids: 0.3 },
        }),
        gets: 'plan',
        check: (got) => {
          expect(got.build?.total.to).toBeCloseTo(480, 6);
          expect(got.build?.over).toBe(true);
        },
      },
    ],
  },
  {
    title: 'flat clear over a black dresser',
    evidence:
      'Common practice: flat over black dries cloudy where the flatting agent was not stirred in; stir several minutes. Milky while wet is normal. The flattest are softer (a test in print).',
    plans: [
      {
        job: job({ sheen: 'matte', tone: 'dark' }),
        gets: 'plan',
        coats: [3, 3],
        care: [/[Ss]tir from the bottom for several minutes/],
        looks: ['cloudy-film'],
      },
      {
        job: job({ sheen: 'matte', tone: 'dark', wear: 'high' }),
        gets: 'plan',
        care: [/softer/],
      },
      {
        job: job({ sheen: 'gloss', tone: 'dark' }),
        gets: 'plan',
        check: (got) => expect(got.care.map(({ why }) => why).join()).not.toMatch(/flatting/),
      },
    ],
  },
  {
    title: 'one weekend for three coats, and only weekends',
    evidence:
      'Water-based 2–4 h between coats: three in a weekend. Oil-based usually overnight: not three in two days of work; sanded where 24 h have passed.',
    plans: [
      {
        job: job({ start: 5 * DAY + 9 * HOUR, hours: WEEKENDS }),
        gets: 'plan',
        coats: [3, 3],
        between: 2,
        check: (got) => {
          const { coats } = plan(got);
          expect(coats.at(-1)?.to).toBeLessThanOrEqual(7 * DAY);
        },
      },
      {
        job: job({ ...bare, product: 'oil-based-polyurethane', start: 5 * DAY + 9 * HOUR, hours: WEEKENDS }),
        gets: 'plan',
        coats: [2, 3],
        between: 6,
        rules: ['oily-rags'],
        check: (got) => {
          const { coats, steps } = plan(got);
          for (const { from, to } of coats) {
            expect([5, 6]).toContain(Math.floor(from / DAY) % 7);
            expect([5, 6]).toContain(Math.floor(to / DAY) % 7);
          }
          const [, , third] = coats;
          if (third) expect(third.from).toBeGreaterThan(7 * DAY);
          for (const [at, { from }] of coats.slice(1).entries())
            if (from - (coats[at]?.to ?? 0) > 3 * DAY)
              expect(steps.find(({ kind, coat }) => kind === 'sand' && coat === at + 2)?.must).toBe('surely');
        },
      },
    ],
  },
  {
    title: 'a tall dresser, its 0.58 m² top laid by brush',
    evidence:
      'Common practice: half a square meter of water-based is spread in under three minutes; more: split at an edge, a slower product, a wider tool. A roller lays this top in two; open times told for water-based begin at two or at three, so it fits or is split. Oil-based stays open 15–30 min (a maker). Tall pieces tip. Full cure: 21 days water-based, 30 oil-based (a maker).',
    plans: [
      {
        job: job(),
        gets: 'plan',
        rules: ['tip-over'],
        fullUse: 21,
        check: (got) => expect(plan(got).wetEdge?.verdict).toBe('split'),
      },
      {
        job: job({ applicator: 'roller' }),
        gets: 'plan',
        check: (got) => expect(plan(got).wetEdge?.verdict).not.toBe('slower'),
      },
      {
        job: job({ ...bare, product: 'oil-based-polyurethane' }),
        gets: 'plan',
        fullUse: 30,
        check: (got) => expect(plan(got).wetEdge?.verdict).toBe('fits'),
      },
      {
        job: job({ ...bare, product: 'shellac', day: day(20, 0.45), wear: 'low' }),
        gets: 'plan',
        check: (got) => expect(plan(got).wetEdge?.verdict).not.toBe('fits'),
      },
    ],
  },
];
