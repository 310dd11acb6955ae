import type { Step } from '#engine/model/step.ts';
import { fire, rulesForStep } from '#engine/rules/rules.ts';
import type { Check } from './checks.ts';
import { told } from './told.ts';

const SOLVENTS = ['mineral-spirits', 'alcohol', 'naphtha', 'lacquer-retarder'] as const;
const say = 'Only for the check of its cautions.';
const coating = (product: (Step & { kind: 'coat' })['product'], by?: 'hand' | 'spray'): Step => ({
  kind: 'coat',
  product,
  thin: true,
  ...(by && { by }),
  say,
});
const wiping = (means: (typeof SOLVENTS)[number]): Step => ({ kind: 'wipe', with: means, say });

/** Which step or fact must bring which caution: the triggers of the evidence on safety, by its numbers there. */
const CAUTIONED: readonly (readonly [
  rule: string,
  facts: Record<string, string | number>,
  step: Step | undefined,
])[] = [
  ['oily-rags', { family: 'oil-based' }, { kind: 'wipe', with: 'dry-cloth', of: 'same', say }],
  ['oily-rags', { family: 'oil' }, coating('same')],
  ['oily-rags', { family: 'hardwax-oil' }, { kind: 'wipe', with: 'fresh-oil', say }],
  ['oily-rags', { family: 'wipe-on' }, coating('same')],
  ['oily-rags', { family: 'wax', 'tin-lists-oil': 'yes' }, coating('wax')],
  ['oily-rags', {}, { kind: 'wipe', with: 'fresh-oil', say }],
  ['oily-rags', { family: 'wax' }, coating('oil')],
  // Oil stain heats up by itself whatever top coat is laid on it.
  ['oily-rags', { family: 'water-based' }, coating('stain')],
  ['oily-rags', { base: 'oil-paint', family: 'water-based' }, coating('base-color')],
  ['what-is-in-the-can', {}, coating('same')],
  ['what-is-in-the-can', {}, coating('base-color')],
  ...(['before-1993', 'unknown'] as const).flatMap((age) =>
    (
      [
        { kind: 'sand', grit: 320, say },
        { kind: 'scrape', tool: 'card-scraper', say },
        { kind: 'strip', with: 'stripper', say },
      ] satisfies Step[]
    ).flatMap((step): [string, Record<string, string>, Step][] => [
      ['lead-before-sanding', { age }, step],
      ['lead-test-limits', { age }, step],
      ['lead-work-wet', { age }, step],
    ]),
  ),
  ['is-there-old-paint-below', {}, { kind: 'strip', with: 'scraper-and-sanding', say }],
  ['is-there-old-paint-below', {}, { kind: 'sand', grit: 240, say }],
  ['is-there-old-paint-below', {}, { kind: 'sand', grit: 320, say }],
  ['is-there-old-paint-below', {}, { kind: 'sand', grit: 1500, say }],
  ['old-paint-in-reach', { piece: 'childs-item', age: 'before-1993' }, undefined],
  ['sanding-dust', {}, { kind: 'sand', grit: 320, say }],
  ['sanding-dust', {}, { kind: 'strip', with: 'scraper-and-sanding', say }],
  ['is-there-old-paint-below', {}, { kind: 'scrape', tool: 'plastic-scraper', say }],
  ['is-there-old-paint-below', {}, { kind: 'scrape', tool: 'razor', say }],
  ...(['spray-gun', 'aerosol'] as const).flatMap((applicator) =>
    (['lacquer', 'shellac', 'oil-based', 'wipe-on'] as const).flatMap(
      (family): [string, Record<string, string>, Step][] => [
        ['mask-is-not-for-vapor', { applicator, family }, coating('same')],
        ['vapor-and-flame-when-spraying', { applicator, family }, coating('same')],
      ],
    ),
  ),
  // The gas of a spray can burns even where the finish does not.
  ['vapor-and-flame-when-spraying', { applicator: 'aerosol', family: 'water-based' }, coating('same')],
  // The mist of a water-based finish needs the mask as well.
  ['mask-is-not-for-vapor', { applicator: 'spray-gun', family: 'water-based' }, coating('same')],
  // A patch is tried with the tool that lays the coat.
  ...(['mask-is-not-for-vapor', 'vapor-and-flame-when-spraying'] as const).map(
    (rule): [string, Record<string, string>, Step] => [
      rule,
      { applicator: 'aerosol', family: 'lacquer' },
      { kind: 'test-patch', tries: 'same', hours: [1, 2], say },
    ],
  ),
  ['mask-is-not-for-vapor', {}, coating('same', 'spray')],
  ['vapor-and-flame-when-spraying', {}, coating('same', 'spray')],
  ['vapor-and-flame-when-spraying', {}, { kind: 'wipe', with: 'lacquer-retarder', by: 'spray', say }],
  ['mask-is-not-for-vapor', {}, { kind: 'wipe', with: 'lacquer-retarder', by: 'spray', say }],
  ['vapor-and-flame-when-spraying', {}, { kind: 'look', does: ['mist'], say }],
  ['if-you-spray', {}, coating('same')],
  ['warm-without-a-flame', {}, { kind: 'wait', hours: [24, 24], does: ['heat'], say }],
  ['mold-spores', {}, { kind: 'wipe', with: 'vacuum', does: ['mold-spores'], say }],
  ['caustic', {}, { kind: 'look', does: ['caustic'], say }],
  ['oxalic-acid', {}, { kind: 'wipe', with: 'wood-bleach', say }],
  ...SOLVENTS.flatMap((means) =>
    ['vapor-and-flame', 'skin-and-spirits', 'sparks', 'waste'].map(
      (rule): [string, Record<string, string>, Step] => [rule, {}, wiping(means)],
    ),
  ),
  ...(['dewaxed-shellac', 'shellac-primer'] as const).map(
    (product): [string, Record<string, string>, Step] => [
      'vapor-and-flame',
      {},
      { kind: 'coat', product, thin: true, say },
    ],
  ),
  ['skin-and-spirits', {}, { kind: 'coat', product: 'dewaxed-shellac', thin: true, say }],
  // Denatured alcohol and thinner go through gloves in her own finish too.
  ['skin-and-spirits', { family: 'shellac' }, coating('same')],
  ['skin-and-spirits', { family: 'lacquer' }, coating('same')],
  ['not-sanded-before-full-cure', { hardener: 'isocyanate' }, { kind: 'sand', grit: 320, say }],
  ...['vapor-and-flame', 'skin-and-spirits', 'sparks', 'waste'].map(
    (rule): [string, Record<string, string>, Step] => [rule, {}, { kind: 'strip', with: 'solvent', say }],
  ),
  ['vapor-and-flame', {}, { kind: 'strip', with: 'stripper', say }],
  ['waste', {}, { kind: 'strip', with: 'stripper', say }],
  ['much-solvent', {}, { kind: 'strip', with: 'stripper', say }],
  ['much-solvent', {}, { kind: 'strip', with: 'solvent', say }],
  ['much-solvent', { family: 'oil-based' }, { kind: 'wipe', with: 'thinner', say }],
  ['much-solvent', {}, { kind: 'wipe', with: 'alcohol', does: ['much-vapor'], say }],
  ['stripper-with-dichloromethane', {}, { kind: 'strip', with: 'stripper', say }],
  ['stripper-care', {}, { kind: 'strip', with: 'stripper', say }],
  ['aerosol-can', { applicator: 'aerosol' }, coating('same')],
  ['spray-room', { applicator: 'spray-gun' }, coating('same')],
  ['asbestos', { age: 'unknown' }, { kind: 'strip', with: 'stripper', say }],
  ['asbestos', { age: 'before-1993' }, { kind: 'sand', grit: 240, say }],
  ['blades', {}, { kind: 'scrape', tool: 'razor', say }],
  ['blades', {}, { kind: 'scrape', tool: 'card-scraper', say }],
  ['solvent-limits', {}, { kind: 'mix', what: 'thin', say }],
  ['thin-limit', {}, { kind: 'mix', what: 'thin', say }],
  ['extender-limit', {}, { kind: 'mix', what: 'extender', say }],
  ['tint-limit', {}, { kind: 'mix', what: 'tint', say }],
  ['not-a-crib', { piece: 'crib' }, undefined],
  ['childs-item', { piece: 'childs-item' }, undefined],
  ['valuable-piece', { piece: 'valuable' }, undefined],
  ['food-surface', { piece: 'food-surface' }, undefined],
  ['tip-over', { piece: 'furniture', stage: 'cured' }, undefined],
  ['mold', { 'fuzzy-or-musty': 'yes' }, undefined],
  ['hardener-isocyanate', { hardener: 'isocyanate' }, undefined],
  ['hardener-acid', { hardener: 'acid' }, undefined],
  ['cure-before-use', { stage: 'dry-to-touch' }, undefined],
  ['cure-before-use', { stage: 'recoatable' }, undefined],
  ['no-fuel-heater', { 'air-celsius': 12 }, undefined],
  ['no-heat-on-a-wet-film', { stage: 'wet' }, undefined],
  ['no-heat-on-a-wet-film', { stage: 'setting' }, undefined],
  ['soft-below-a-dry-skin', { stage: 'dry-to-touch' }, undefined],
];

/** Rules that stand alone on the screen, before anything else. */
const STOPS = [
  'oily-rags',
  'caustic',
  'lead-before-sanding',
  'is-there-old-paint-below',
  'vapor-and-flame-when-spraying',
  'stripper-with-dichloromethane',
  'not-a-crib',
  'childs-item',
  'valuable-piece',
  'mold',
  'hardener-isocyanate',
  'no-fuel-heater',
];

/** Every caution of the evidence on safety comes at its step or fact, and every stop stops. */
export const cautionsComeInTime: Check = (known) => [
  ...CAUTIONED.flatMap(([rule, facts, step]) => {
    const fired = step
      ? rulesForStep(known, told(facts), step)
      : Object.values(fire(known, told(facts), [])).flat();
    return fired.some((one) => one.id === rule)
      ? []
      : [`${rule} is silent for ${JSON.stringify(facts)} ${step ? `before ${step.kind}` : ''}`];
  }),
  ...STOPS.flatMap((id) => {
    const rule = known.has('rule', id) ? known.get('rule', id) : undefined;
    return rule?.kind === 'stop' && rule.level === 'stop' ? [] : [`${id} does not stop`];
  }),
];
