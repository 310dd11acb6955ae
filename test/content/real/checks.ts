/**
 * Checks of the content against the trade, beyond what the proofs hold. Each names every place that breaks it,
 * so that the mutation run can ask them too.
 */
import { answerOf } from '#engine/answers.ts';
import { type Case, emptyCase, resolve } from '#engine/index.ts';
import type { Knowledge } from '#engine/knowledge.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import type { Step } from '#engine/model/step.ts';
import { fire, rulesForStep } from '#engine/rules.ts';
import { isAsk, visits } from '#engine/tree.ts';
import { shownByTheRightFlaws } from './shown-by.ts';

export type Check = (known: Knowledge) => string[];

const CLEAR = ['same', 'same-in-gloss', 'tinted-same', 'water-based', 'mist-of-same'];
/** Grease and silicone come off with spirits only: the last wipe of these is a wash, not a dusting. */
const WASHES = ['clean-seal-and-recoat', 'wash-off-clean-and-seal', 'dull-and-recoat'];

export const told = (facts: Record<string, string | number>): Case =>
  Object.entries(facts).reduce(
    (on, [name, value]) => ({ ...on, [name]: { value, how: 'told' as const } }),
    emptyCase(),
  );

/** Common practice, no source: 300 grit or finer between clear coats. A stripped piece begins afresh. */
export const sandedFineBetweenCoats: Check = (known) =>
  known.remedies.flatMap((remedy) => {
    let last: number | undefined;
    let stripped = false;
    return remedy.steps.flatMap((step) => {
      if (step.kind === 'strip') stripped = true;
      if (step.kind === 'sand') last = step.grit;
      if (step.kind !== 'coat') return [];
      const [grit, bare] = [last, stripped];
      last = undefined;
      stripped = false;
      const coarse = CLEAR.includes(step.product) && grit && grit < 320 && !bare;
      return coarse ? [`${remedy.id}: P${grit} before ${step.product}`] : [];
    });
  });

/** Common practice, no source: sanding dust comes off with a clean rag, dry or barely damp. */
export const dustedWithoutSpirits: Check = (known) => {
  const waterBased = new Set(
    known.defects
      .filter((defect) => defect.families.includes('water-based'))
      .flatMap((defect) =>
        [...visits(defect.tree)].flatMap(({ branch }) =>
          'remedy' in branch ? [branch.remedy as string] : [],
        ),
      ),
  );
  return known.remedies.flatMap((remedy) => {
    if (!waterBased.has(remedy.id) || WASHES.includes(remedy.id)) return [];
    const said = resolve(known, remedy.id, told({ family: 'water-based' })).map((step) => step.say);
    const steps = remedy.steps.filter((step) => said.includes(step.say));
    return steps.flatMap((step, index) => {
      if (step.kind !== 'coat' || !CLEAR.includes(step.product)) return [];
      const sanded = steps.slice(0, index).findLastIndex((one) => one.kind === 'sand');
      if (sanded <= steps.slice(0, index).findLastIndex((one) => one.kind === 'coat')) return [];
      const wipe = steps.slice(sanded, index).findLast((one) => one.kind === 'wipe');
      return wipe?.kind === 'wipe' && !['vacuum', 'dry-cloth', 'damp-cloth'].includes(wipe.with)
        ? [`${remedy.id}: ${wipe.with} before ${step.product}`]
        : [];
    });
  });
};

/** Common practice, no source: what a buyer can not see from where she stands is left as it is. */
export const unseenIsLeft: Check = (known) =>
  known.defects.flatMap((defect) =>
    [...visits(defect.tree)].flatMap(({ branch }) => {
      if (!isAsk(branch) || branch.ask !== 'seen-at-arms-length') return [];
      const left = (end: typeof branch.no): boolean =>
        'leave' in end || ('remedy' in end && known.get('remedy', end.remedy).now.cured.do === 'accept');
      return [
        ...(left(branch.no) ? [] : [`${defect.id}: what is not seen is mended`]),
        ...(left(branch.yes) ? [`${defect.id}: what is seen is left`] : []),
      ];
    }),
  );

/** A coat dries before anything else is done to it. */
export const coatsAreWaitedFor: Check = (known) =>
  known.remedies.flatMap((remedy) =>
    remedy.steps.flatMap((step, index) =>
      step.kind === 'coat' &&
      !['wax', 'oil', 'grain-filler'].includes(step.product) &&
      remedy.steps[index + 1]?.kind !== 'wait'
        ? [`${remedy.id}: ${remedy.steps[index + 1]?.kind ?? 'nothing'} right after the coat`]
        : [],
    ),
  );

const HARD_WORK = ['sand', 'scrape', 'strip'];

/** Whoever took the stage for later than it is, meets a wait before anything cuts, wets or covers the film. */
export const repairsBeginByWaiting: Check = (known) =>
  known.remedies.flatMap((remedy) => {
    const first = remedy.steps.findIndex(
      (step) =>
        HARD_WORK.includes(step.kind) ||
        step.kind === 'coat' ||
        (step.kind === 'wipe' && step.with !== 'dry-cloth'),
    );
    const before = remedy.steps.slice(0, Math.max(first, 0));
    return first >= 0 && !before.some((step) => step.kind === 'wait' || step.kind === 'look')
      ? [`${remedy.id}: begins with ${remedy.steps[first]?.kind}`]
      : [];
  });

/**
 * Extender to 15 %, water-based finish thinned to 10 % (a dealer's sheet, instructions for a waterborne clear, undated);
 * varnish to 25 % for a last coat (Flexner, 'The 7 myths of polyurethane', 2008).
 */
export const mixesStayWithinTheTrade: Check = (known) =>
  known.remedies.flatMap((remedy) =>
    remedy.steps.flatMap((step) => {
      if (step.kind !== 'mix' || !step.percent || step.what === 'tint') return [];
      const families = step.when?.['family'];
      const waterBased = [families]
        .flat()
        .some((family) => family === 'water-based' || family === 'water-lacquer');
      const most = step.what === 'extender' ? 15 : waterBased ? 10 : 25;
      return step.percent[1] > most
        ? [`${remedy.id}: ${step.what} to ${step.percent[1]} %, ${most} at most`]
        : [];
    }),
  );

/**
 * Varnish is rubbed and polished two to six weeks on (Van Dyke 2021; Dresdner), lacquer after a week (common practice):
 * a film is cured, or a week old, before polish.
 */
export const polishWaitsForCure: Check = (known) =>
  known.remedies.flatMap((remedy) => {
    const polish = remedy.steps.findIndex((step) => step.kind === 'wipe' && step.with === 'polish');
    const cured = remedy.steps
      .slice(0, Math.max(polish, 0))
      .some((step) => step.kind === 'wait' && (step.until === 'cured' || (step.hours?.[0] ?? 0) >= 168));
    return polish >= 0 && !cured ? [`${remedy.id}: polished before it is cured`] : [];
  });

/** What the kind of top coat alone tells is the sign of every defect that is met on such kinds only. */
export const signsFollowTheFamilies: Check = (known) =>
  known.defects.flatMap((defect) =>
    Object.entries(defect.signs).flatMap(([question, sign]) => {
      const answers = new Set(defect.families.map((family) => answerOf(known, told({ family }), question)));
      const [only] = answers;
      if (answers.has(undefined)) return [];
      const wanted = answers.size === 1 ? only : 'either, or mostly so';
      return wanted === sign || (answers.size > 1 && sign !== 'yes' && sign !== 'no')
        ? []
        : [`${defect.id}: ${question} is ${sign}, the families say ${wanted}`];
    }),
  );

/** A tree hands over to a defect only on an answer that this defect shows. */
export const handoversAgreeWithSigns: Check = (known) =>
  known.defects.flatMap((defect) =>
    [...visits(defect.tree)].flatMap(({ branch, answers }) => {
      if (!('defect' in branch)) return [];
      const { signs } = known.get('defect', branch.defect);
      return answers.flatMap(({ question, answer }) => {
        const sign = signs[question as QuestionId];
        return (sign === 'yes' || sign === 'no') && sign !== answer
          ? [`${defect.id} hands over to ${branch.defect} on ${question}=${answer}, whose sign is ${sign}`]
          : [];
      });
    }),
  );

const SOLVENTS = ['mineral-spirits', 'alcohol', 'naphtha', 'lacquer-retarder'] as const;
const say = 'Only for the check of its cautions.';
const wiping = (means: (typeof SOLVENTS)[number]): Step => ({ kind: 'wipe', with: means, say });

/** Which step or fact must bring which caution: the triggers of the evidence on safety, by its numbers there. */
const CAUTIONED: readonly (readonly [
  rule: string,
  facts: Record<string, string | number>,
  step: Step | undefined,
])[] = [
  ['oily-rags', { family: 'oil-based' }, { kind: 'wipe', with: 'dry-cloth', say }],
  ['oily-rags', { family: 'oil' }, { kind: 'coat', product: 'same', thin: true, say }],
  ['oily-rags', { family: 'hardwax-oil' }, { kind: 'wipe', with: 'fresh-oil', say }],
  ['oily-rags', { family: 'wipe-on' }, { kind: 'coat', product: 'same', thin: true, say }],
  ['oily-rags-from-this-step', {}, { kind: 'wipe', with: 'fresh-oil', say }],
  ['oily-rags-from-this-step', { family: 'wax' }, { kind: 'coat', product: 'oil', thin: true, say }],
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
      ...(age === 'before-1993'
        ? [['lead-work-wet', { age }, step] as [string, Record<string, string>, Step]]
        : []),
    ]),
  ),
  ['is-there-old-paint-below', {}, { kind: 'strip', with: 'scraper-and-sanding', say }],
  ['is-there-old-paint-below', {}, { kind: 'sand', grit: 240, say }],
  ['old-paint-in-reach', {}, { kind: 'sand', grit: 320, say }],
  ['sanding-dust', {}, { kind: 'sand', grit: 320, say }],
  ['sanding-dust', {}, { kind: 'strip', with: 'scraper-and-sanding', say }],
  [
    'mask-is-not-for-vapor',
    { applicator: 'spray-gun', family: 'lacquer' },
    { kind: 'coat', product: 'same', thin: true, say },
  ],
  [
    'mask-is-not-for-vapor',
    { applicator: 'aerosol', family: 'shellac' },
    { kind: 'coat', product: 'same', thin: true, say },
  ],
  [
    'vapor-and-flame-when-spraying',
    { applicator: 'spray-gun', family: 'lacquer' },
    { kind: 'coat', product: 'same', thin: true, say },
  ],
  [
    'vapor-and-flame-when-spraying',
    { applicator: 'aerosol', family: 'shellac' },
    { kind: 'coat', product: 'same', thin: true, say },
  ],
  [
    'vapor-and-flame-when-spraying',
    { applicator: 'aerosol', family: 'oil-based' },
    { kind: 'coat', product: 'same', thin: true, say },
  ],
  [
    'vapor-and-flame-when-spraying',
    { applicator: 'spray-gun', family: 'wipe-on' },
    { kind: 'coat', product: 'same', thin: true, say },
  ],
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
  ...['vapor-and-flame', 'skin-and-spirits', 'sparks', 'waste'].map(
    (rule): [string, Record<string, string>, Step] => [rule, {}, { kind: 'strip', with: 'solvent', say }],
  ),
  ['vapor-and-flame', {}, { kind: 'strip', with: 'stripper', say }],
  ['waste', {}, { kind: 'strip', with: 'stripper', say }],
  ['stripper-with-dichloromethane', {}, { kind: 'strip', with: 'stripper', say }],
  ['stripper-care', {}, { kind: 'strip', with: 'stripper', say }],
  ['aerosol-can', { applicator: 'aerosol' }, { kind: 'coat', product: 'same', thin: true, say }],
  ['spray-room', { applicator: 'spray-gun' }, { kind: 'coat', product: 'same', thin: true, say }],
  ['asbestos', { age: 'unknown' }, { kind: 'strip', with: 'stripper', say }],
  ['asbestos', { age: 'before-1993' }, { kind: 'sand', grit: 240, say }],
  ['blades', {}, { kind: 'scrape', tool: 'razor', say }],
  ['blades', {}, { kind: 'scrape', tool: 'card-scraper', say }],
  ['solvent-limits', {}, { kind: 'mix', what: 'thin', say }],
  ['thin-limit', {}, { kind: 'mix', what: 'thin', say }],
  ['thin-limit', {}, { kind: 'mix', what: 'extender', say }],
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
  'oily-rags-from-this-step',
  'lead-before-sanding',
  'is-there-old-paint-below',
  'vapor-and-flame-when-spraying',
  'stripper-with-dichloromethane',
  'not-a-crib',
  'childs-item',
  'valuable-piece',
  'mold',
  'hardener-isocyanate',
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

export const CHECKS: Readonly<Record<string, Check>> = {
  sandedFineBetweenCoats,
  dustedWithoutSpirits,
  unseenIsLeft,
  coatsAreWaitedFor,
  repairsBeginByWaiting,
  mixesStayWithinTheTrade,
  polishWaitsForCure,
  signsFollowTheFamilies,
  handoversAgreeWithSigns,
  cautionsComeInTime,
  shownByTheRightFlaws,
};
