/**
 * Twelve situations that refinishers meet, with the handling that the trade holds right: common practice, no source,
 * unless a source is named. `inHand` is what is to be said at once, and what must never be said.
 */
import { expect } from 'vitest';
import type { Scenario } from './scenario.ts';
import { job } from './sheet.ts';

const bare = { base: 'bare-wood', baseHours: undefined, tone: 'wood', applicator: 'cloth' } as const;
const day = (celsius: number, relativeHumidity = 0.5) => ({ celsius, relativeHumidity });
const aerosol = { product: 'aerosol-lacquer', applicator: 'aerosol' } as const;

export const ONE_TO_FIVE: readonly Scenario[] = [
  {
    title: '1: green sideboard, aerosol lacquer, 12 °C, rain, 85 %: a white fog after ten minutes',
    evidence:
      'Dew point 9.6 °C, gap 2.4 °C: no coat. Cans build thin: three coats are not thick yet, one or two more, not five. The last coat at 18 °C or more with a gap of 11 °C.',
    plans: [
      {
        job: job({ ...aerosol, day: day(12, 0.85) }),
        gets: 'weather',
        because: [/2\.4 °C/],
        rules: ['no-fuel-heater'],
      },
      {
        job: job({ ...aerosol, day: day(20, 0.45) }),
        gets: 'plan',
        coats: [4, 5],
        care: [/wrinkle the paint/],
        rules: ['vapor-and-flame-when-spraying', 'aerosol-can', 'mask-is-not-for-vapor'],
        looks: ['blush'],
      },
      {
        job: job({ ...aerosol, day: day(15, 0.4) }),
        gets: 'plan',
        check: (got) => expect(got.weatherCare.join(' ')).toMatch(/wants 18 °C/),
      },
      { job: job({ ...aerosol, day: day(20, 0.45), age: 'unknown' }), gets: 'rule', because: [/lead/i] },
    ],
    inHand: [
      {
        defect: 'blush',
        facts: {
          stage: 'setting',
          family: 'lacquer',
          applicator: 'aerosol',
          base: 'latex-paint',
          'base-tone': 'dark',
          age: 'unknown',
          'air-celsius': 12,
          'coat-number': 3,
        },
        yes: ['white-or-milky'],
        no: [],
        does: 'leave',
        says: [/vapor out/, /warm the room/],
        warns: [/hair dryer/, /next coat/, /house heating|oil-filled/],
        never: ['repair', 'wash-off', 'wipe-back', 'tip-off'],
      },
      {
        // The next dry day. A mist of retarder after a test, or a P1000 rub: over paint the rub is the safer one.
        defect: 'blush',
        facts: {
          stage: 'recoatable',
          family: 'lacquer',
          applicator: 'aerosol',
          base: 'latex-paint',
          'base-tone': 'dark',
          age: 'unknown',
          'hours-since-coat': 26,
        },
        yes: ['white-or-milky', 'seen-at-arms-length'],
        no: ['lines-follow-sanding', 'came-in-use', 'feels-like-sandpaper', 'stain-not-paint-below'],
        does: 'repair',
        says: [/hidden spot/, /P1000/],
        warns: [/soften the paint/],
        stops: ['lead-before-sanding'],
        steps: [/P1000/, /dry day/],
        never: ['strip', 'mist-the-fog-away'],
      },
    ],
  },
  {
    title: '2: off-white blanket box, chalk-type paint 6 h old, dark wax muddy in one corner',
    evidence: 'Paint 24 h before wax, clear wax first (paint and wax makers). Clear wax on a cloth, lightly.',
    plans: [
      {
        job: job({
          base: 'chalk-paint',
          baseHours: 6,
          tone: 'light',
          product: 'soft-wax',
          applicator: 'cloth',
          wear: 'low',
        }),
        gets: 'plan',
        notBefore: 18,
        coats: [2, 3],
        between: 24,
        care: [/[Cc]lear wax first/],
        looks: ['wax-smears', 'sticky-wax'],
      },
    ],
    inHand: [
      {
        defect: 'dark-wax-blotches',
        facts: { stage: 'wet', family: 'wax', base: 'chalk-paint', 'base-tone': 'light' },
        yes: ['dark-wax-used', 'seen-at-arms-length'],
        no: ['there-before-the-wax'],
        does: 'wipe-back',
        says: [/clear wax/, /clean cloth/, /lightly/],
        warns: [/no solvent/],
        steps: [/clear wax/, /Leave it for a day/, /clear wax over the whole/],
        never: ['repair', 'wash-off', 'sand'],
      },
    ],
  },
  {
    title: '3: oak table, oil-varnish blend, two hours old in a 27 °C sunroom: shiny dots',
    evidence:
      'Rags first. Out of the sun, wiped dry every half hour; 24–48 h before coat two. The blend itself is not refused on an oak table: plain oil is, by our own reading.',
    plans: [
      {
        job: job({ ...bare, product: 'oil-varnish-blend', day: day(27), inSun: true }, 'dining-table'),
        gets: 'weather',
        because: [/sun/],
      },
      {
        job: job({ ...bare, product: 'oil-varnish-blend' }, 'dining-table'),
        gets: 'plan',
        between: 24,
        rules: ['oily-rags'],
        looks: ['oil-bleed-back'],
        care: [/wears through/],
      },
    ],
    inHand: [
      {
        defect: 'oil-bleed-back',
        facts: { stage: 'wet', family: 'oil', base: 'bare-wood', 'base-tone': 'wood', 'hours-since-coat': 2 },
        yes: ['oil-spots-from-pores', 'warmed-after-coating'],
        no: [],
        does: 'wipe-back',
        says: [/half hour/, /sun/],
        warns: [/second coat/i],
        stops: ['oily-rags'],
        never: ['leave', 'wait', 'repair', 'cut-the-scabs'],
      },
    ],
  },
  {
    title: '4: beech stool, boiled linseed brushed on and left, day 5 at 14 °C, sticky',
    evidence:
      '48 h at 18–22 °C, and about twice as slow for each 10 °C colder: 73 h at 14 °C. Rags first; fresh oil, ten minutes, rub, wipe, then 48 h warm and a tissue test.',
    plans: [
      {
        job: job({ ...bare, product: 'drying-oil', day: day(14), night: day(14) }, 'chair'),
        gets: 'plan',
        between: 48 * 2 ** 0.6,
        rules: ['oily-rags', 'no-fuel-heater'],
        looks: ['sticky-oil'],
      },
    ],
    inHand: [
      {
        defect: 'sticky-oil',
        facts: {
          stage: 'dry-to-touch',
          overdue: 'yes',
          family: 'oil',
          base: 'bare-wood',
          'air-celsius': 14,
          'hours-since-coat': 120,
        },
        // Cold, but no longer getting drier: the evidence asks for both before it is left to dry on.
        yes: ['still-tacky'],
        no: ['young-or-cold-oil', 'oil-that-never-dries'],
        does: 'repair',
        says: [/fresh oil/, /not dry by waiting/],
        warns: [/second coat/i, /heat gun/],
        stops: ['oily-rags'],
        steps: [/fresh oil/, /until the cloth stays dry/, /48 hours/, /tissue/],
        never: ['strip', 'does:coat/same'],
      },
    ],
  },
  {
    title: '5: mahogany bureau, old French polish, white mug ring, buyer due tomorrow',
    evidence:
      'A conservator first where it may be worth one. If ordinary: mineral spirits for a minute; then jelly overnight; alcohol only by one who has done it. No iron.',
    plans: [
      {
        job: job({
          kind: 'valuable',
          base: 'old-finish',
          tone: 'wood',
          age: 'since-1993',
          product: 'shellac',
        }),
        gets: 'rule',
        because: [/conservator/, /solvent/],
      },
    ],
    inHand: [
      {
        defect: 'white-rings',
        facts: { stage: 'cured', family: 'shellac', piece: 'valuable' },
        yes: ['ring-or-object-shape'],
        no: ['ring-is-dark', 'after-something-hot', 'goes-with-mineral-spirits', 'came-within-three-days'],
        does: 'stop',
        says: [/conservator/],
        stops: ['valuable-piece'],
        never: ['does:wipe/alcohol', 'sand', 'strip', 'coat'],
      },
      {
        defect: 'white-rings',
        facts: { stage: 'cured', family: 'shellac', piece: 'furniture' },
        yes: ['goes-with-mineral-spirits', 'seen-at-arms-length'],
        no: ['ring-is-dark', 'after-something-hot', 'came-within-three-days'],
        does: 'repair',
        says: [/only in the wax/],
        steps: [/mineral spirits/, /buff/],
        never: ['sand', 'strip', 'does:wipe/alcohol'],
      },
      {
        defect: 'white-rings',
        facts: { stage: 'cured', family: 'shellac', piece: 'furniture' },
        yes: ['softens-with-alcohol', 'seen-at-arms-length'],
        no: [
          'ring-is-dark',
          'after-something-hot',
          'goes-with-mineral-spirits',
          'came-within-three-days',
          'old-and-valuable',
        ],
        does: 'repair',
        says: [/barely damp/],
        warns: [/[Ii]ron/],
        steps: [/mineral spirits first/, /jelly on the mark overnight/, /only if you have done this before/],
        never: ['sand', 'strip'],
      },
    ],
  },
];
