/** The rest of the trade's twelve; see scenarios-of-the-trade-1-to-5.ts. */
import type { Scenario } from './scenario.ts';
import { job } from './sheet.ts';

const bare = { base: 'bare-wood', baseHours: undefined, tone: 'wood', applicator: 'cloth' } as const;
const day = (celsius: number, relativeHumidity = 0.5) => ({ celsius, relativeHumidity });

export const SIX_TO_TWELVE: readonly Scenario[] = [
  {
    title: '6: drop-side crib, to be painted mint and made safe',
    evidence:
      'US rules since 28 June 2011 cover used cribs, and drop sides never comply (consignment note, July 2011). No top coat mends it; no repair path is shown.',
    plans: [
      { job: job({ kind: 'crib' }), gets: 'rule', because: [/baby to sleep in/, /plant stand or bench/] },
      {
        job: job({ kind: 'crib', trials: ['child'], base: 'old-finish', age: 'unknown' }),
        gets: 'rule',
        because: [/baby to sleep in/, /lead/],
      },
    ],
    inHand: [
      {
        defect: 'runs-and-sags',
        facts: { stage: 'recoatable', family: 'water-based', piece: 'crib' },
        yes: ['hangs-down', 'will-be-seen'],
        no: ['fattest-part-is-soft'],
        does: 'repair',
        says: [],
        stops: ['not-a-crib'],
        never: ['sand', 'coat', 'scrape', 'strip'],
      },
    ],
  },
  {
    title: '7: oak chair, shellac of a three-year-old tin, 24 h at 18 °C, a thumb prints',
    evidence:
      'Stop coating; a drop on glass for two hours; if soft, wash off with alcohol, overnight, a fresh mix with its date. Not a week of warmth.',
    plans: [
      {
        job: job({ ...bare, product: 'shellac', applicator: 'brush', day: day(18, 0.45) }, 'chair'),
        gets: 'plan',
        coats: [2, 4],
        care: [/drinks mark it/],
        looks: ['old-shellac', 'blush'],
        rules: ['vapor-and-flame'],
      },
    ],
    inHand: [
      {
        defect: 'old-shellac',
        facts: {
          stage: 'dry-to-touch',
          overdue: 'yes',
          family: 'shellac',
          base: 'bare-wood',
          'air-celsius': 18,
          'hours-since-coat': 24,
        },
        yes: ['still-tacky', 'can-is-old'],
        no: ['dries-hard-on-glass'],
        asks: 'dries-hard-on-glass',
        does: 'repair',
        says: [/not get hard/, /alcohol/, /fresh mix/],
        warns: [/second coat/i, /heat/],
        steps: [/on glass for two hours/, /denatured alcohol/, /overnight/, /Date the jar/],
        never: ['strip'],
      },
    ],
  },
  {
    title: '8: farm table in waxed chalk-type paint, to be made wipe-clean',
    evidence:
      'A film over wax peels. Wax off with 3–5 cloths, dry a day, a tape test, dewaxed shellac, water-based clear. It names three thin coats; for a table of daily use two makers say 4–5 and the rule of thumb about 5, so three is read as the least. Hot cups and wet things after 30 days (two makers: 21 and 30).',
    plans: [
      {
        job: job({ base: 'wax' }, 'dining-table'),
        gets: 'use',
        because: [/peel/, /three to five/, /dry a day/, /tape/, /dewaxed shellac/],
      },
      { job: job({ base: 'chalk-paint' }, 'dining-table'), gets: 'plan', coats: [4, 5], fullUse: 30 },
    ],
  },
  {
    title: '9: nightstand, oil enamel a day old at 15 °C, first lacquer coat crinkles',
    evidence:
      'The base needs days, not hours, at 15 °C: three days at the least before a test of oil or enamel, and oil is 1.4 times slower at 15 °C than at 20 °C. Or a water-based clear, not before 72 h (a maker).',
    plans: [
      {
        job: job({
          base: 'oil-paint',
          baseHours: 24,
          product: 'sprayed-lacquer',
          applicator: 'spray-gun',
          day: day(15, 0.4),
          night: day(15, 0.4),
        }),
        gets: 'base',
        because: [/wrinkles/],
        notBefore: 72 * 2 ** 0.5 - 24,
      },
      {
        job: job({ base: 'oil-paint', baseHours: 24, day: day(15), night: day(15) }),
        gets: 'base',
        notBefore: 72 * 2 ** 0.5 - 24,
      },
    ],
    inHand: [
      {
        defect: 'wrinkling',
        facts: { stage: 'wet', family: 'lacquer', base: 'oil-paint', age: 'unknown', 'air-celsius': 15 },
        yes: ['wrinkled', 'folds-in-minutes', 'folds-reach-the-color', 'fresh-oil-or-stain-below'],
        no: [],
        does: 'leave',
        says: [/Stop/, /do not wipe/],
        warns: [/second coat/],
        never: ['wash-off', 'wipe-back', 'repair', 'tip-off'],
      },
      {
        defect: 'wrinkling',
        facts: { stage: 'recoatable', family: 'lacquer', base: 'oil-paint', age: 'unknown' },
        yes: ['wrinkled', 'folds-in-minutes', 'folds-reach-the-color'],
        no: [],
        does: 'repair',
        says: [/two warm days/],
        stops: ['lead-before-sanding'],
        steps: [/48 hours/, /Scrape/, /Sand/, /dewaxed shellac/, /mist coats/],
        never: ['strip', 'wash-off'],
      },
    ],
  },
  {
    title: '10: teak coffee table, hardwax oil, second coat, 16 °C, sticky at 48 h',
    evidence:
      'Wipe back with a little fresh oil, dry cloths, air; no third coat. A maker stops at two brushed coats. No printed wait between coats at 16 °C: not sooner than a day.',
    plans: [
      {
        job: job({ ...bare, product: 'hardwax-oil', day: day(16), night: day(16) }, 'coffee-table'),
        gets: 'plan',
        coats: [2, 4],
        between: 24,
        rules: ['oily-rags'],
        looks: ['sticky-oil'],
      },
      {
        job: job({ ...bare, product: 'hardwax-oil', applicator: 'brush' }, 'coffee-table'),
        gets: 'plan',
        coats: [2, 2],
      },
    ],
    inHand: [
      {
        defect: 'sticky-oil',
        facts: {
          stage: 'dry-to-touch',
          overdue: 'yes',
          family: 'hardwax-oil',
          base: 'bare-wood',
          'air-celsius': 16,
          'hours-since-coat': 48,
          'coat-number': 2,
        },
        yes: ['still-tacky'],
        no: ['young-or-cold-oil', 'oil-that-never-dries'],
        does: 'repair',
        says: [/fresh oil/, /rub it off/],
        warns: [/second coat/i],
        stops: ['oily-rags'],
        never: ['strip', 'does:coat/same'],
      },
    ],
  },
  {
    title: '11: wardrobe oiled inside a week ago, wanted in three days, smells',
    evidence: 'Open everything at 18–22 °C and put the delivery off by two weeks. No perfume, no shut doors.',
    plans: [
      {
        job: job({ ...bare, product: 'drying-oil', wear: 'low' }, 'cabinet'),
        gets: 'plan',
        handOver: 14,
        rules: ['oily-rags', 'cure-before-use'],
        looks: ['lingering-smell'],
      },
    ],
    inHand: [
      {
        defect: 'lingering-smell',
        facts: { stage: 'dry-to-touch', family: 'oil', 'hours-since-coat': 170 },
        yes: ['only-a-smell'],
        no: ['fuzzy-or-musty', 'still-tacky'],
        does: 'wait',
        says: [/Drawers out, doors open/, /two weeks/],
        warns: [/perfume/, /shut doors/],
        steps: [/two weeks/, /jar/, /dewaxed shellac/],
        never: ['repair', 'wash-off'],
      },
    ],
  },
  {
    title: '12: kitchen dresser, green over cream over brown, little holes in sprayed lacquer',
    evidence:
      'Unknown age and several layers: no sanding; test all layers or seal it in. Holes are silicone: let dry, no thinner over paint, wash three cloths, dewaxed shellac, a mist.',
    plans: [
      {
        job: job({ base: 'old-finish', age: 'unknown', product: 'sprayed-lacquer', applicator: 'spray-gun' }),
        gets: 'rule',
        because: [/lead/, /sand/, /every layer/, /cleaned and coated over/],
      },
    ],
    inHand: [
      {
        defect: 'fisheyes',
        facts: {
          stage: 'wet',
          family: 'lacquer',
          base: 'old-finish',
          age: 'unknown',
          applicator: 'spray-gun',
        },
        yes: ['round-spots', 'raised-rim', 'layer-below-would-lift'],
        no: ['a-drop-landed'],
        does: 'leave',
        says: [/leave it/],
        warns: [/do not wipe it with thinner/],
        never: ['wash-off', 'repair', 'wipe-back'],
      },
      {
        defect: 'fisheyes',
        facts: {
          stage: 'recoatable',
          family: 'lacquer',
          base: 'old-finish',
          age: 'unknown',
          applicator: 'spray-gun',
        },
        yes: ['round-spots', 'raised-rim', 'ever-waxed-or-polished'],
        no: ['a-drop-landed'],
        does: 'repair',
        says: [/Wash first/],
        stops: ['lead-before-sanding'],
        steps: [/fresh cloth each time/, /dewaxed shellac/, /thin/],
        never: ['strip', 'sand'],
      },
    ],
  },
];
