import { type AnswerReads, lookupIn } from './answers.ts';
import { type Case, withFact } from './case.ts';
import { factsIn, holds, type Truth } from './condition.ts';
import type { Knows } from './knowledge.ts';
import { ASKED } from './known-questions.ts';
import type { ConditionInput } from './model/condition.ts';
import type { Family } from './model/family.ts';
import type { Hazard } from './model/hazard.ts';
import type { Means, Off, Step } from './model/step.ts';

/** Whether a condition holds for the case at hand. */
type Ask = (condition: ConditionInput) => Truth;
/** What something does: always, for some facts, or as a can that is not known may do; for some facts only perhaps. */
type Does = readonly (readonly [Hazard, (ConditionInput | 'maybe')?, 'maybe'?])[];

/** Their cans name spirits, alcohol or thinner: paste wax is soft by its solvent, and hardwax oil is thinned with it. */
const SOLVENT_BORNE = { family: ['lacquer', 'shellac', 'oil-based', 'wipe-on', 'wax', 'hardwax-oil'] };
const WATER_BORNE = { family: ['water-based', 'water-lacquer'] };
const BY_HAND = { applicator: ['brush', 'roller', 'pad', 'sponge', 'cloth'] };
/** That the coat is surely sprayed. */
export const SPRAYED = {
  any: [{ applicator: ['spray-gun', 'aerosol'] }, { [ASKED.wasSprayed]: 'yes', not: BY_HAND }],
};
const HEATS_ITSELF = {
  any: [
    { family: ['oil-based', 'wipe-on', 'oil', 'hardwax-oil'] },
    { family: 'wax', [ASKED.tinListsOil]: 'yes' },
  ],
};
/** Over old color the same kind of paint or stain is laid again, and it is what comes off soft. */
const OILY_COLOR = { base: ['oil-paint', 'stain'] };

/** What a label calls hardener, catalyst or crosslinker; a can of which nobody has told may come with one. */
const HARDENED = { hardener: ['isocyanate', 'acid'] };

const SOLVENT: Does = [['vapor'], ['solvent-on-skin'], ['waste']];
const FILM: Does = [['mouth-contact']];
const FINISH: Does = [
  ...FILM,
  ['hardener', HARDENED],
  ['vapor', SOLVENT_BORNE],
  // Denatured alcohol and thinner go through gloves.
  ['solvent-on-skin', { family: ['shellac', 'lacquer'] }],
  // Linseed holds no spirits, and a blend of oil and varnish does.
  ['vapor', { family: 'oil' }, 'maybe'],
  ['oily-cloth', HEATS_ITSELF],
];
/** A can is opened before anything is stirred or mixed in it: its vapor and its second part begin there. */
const OPENED: Does = [
  ['hardener', HARDENED],
  ['vapor', SOLVENT_BORNE],
  ['vapor', { family: 'oil' }, 'maybe'],
];
/** What comes off wet or soft heats up in the cloth, on the paper or as a heap of shavings. */
const COMES_OFF: Readonly<Record<Off, Does>> = {
  oil: [['oily-cloth']],
  same: [['oily-cloth', HEATS_ITSELF]],
  'base-color': [
    ['oily-cloth', OILY_COLOR],
    ['oily-cloth', HEATS_ITSELF],
  ],
  // The water that rinses it off holds the acid, and so do crystals that dry from it.
  'wood-bleach': [['oxalic-acid']],
};
const OIL: Does = [
  ['oily-cloth'],
  ['vapor', 'maybe'],
  ['vapor', { family: 'hardwax-oil' }],
  ['hardener', { ...HARDENED, family: 'hardwax-oil' }],
  ...FILM,
];
const WAX: Does = [['oily-cloth', { [ASKED.tinListsOil]: 'yes' }], ['vapor'], ...FILM];

/** What a material does by being laid on, wiped with or mixed; spraying it is reckoned apart. */
const DOES: Record<Means, Does> = {
  'dry-cloth': [],
  'damp-cloth': [],
  'soapy-water': [],
  vacuum: [],
  polish: [],
  tape: [],
  'mineral-spirits': SOLVENT,
  alcohol: SOLVENT,
  naphtha: SOLVENT,
  'lacquer-retarder': SOLVENT,
  solvent: SOLVENT,
  thinner: SOLVENT.map(([hazard]) => [hazard, { not: WATER_BORNE }] as const),
  'fresh-oil': OIL,
  oil: OIL,
  'fresh-wax': WAX,
  'clear-wax': WAX,
  wax: WAX,
  'wood-bleach': [['oxalic-acid'], ['waste']],
  stripper: [['stripper'], ['vapor'], ['much-vapor'], ['waste']],
  'scraper-and-sanding': [],
  same: FINISH,
  'same-in-gloss': FINISH,
  'tinted-same': FINISH,
  'mist-of-same': FINISH,
  'water-based': [...FILM, ['hardener', HARDENED]],
  // Denatured alcohol is poisonous in part, and goes through gloves.
  'dewaxed-shellac': [...FILM, ['vapor'], ['solvent-on-skin']],
  'shellac-primer': [...FILM, ['vapor'], ['solvent-on-skin']],
  'stain-blocking-primer': [...FILM, ['vapor'], ['oily-cloth', 'maybe']],
  // Water stain is not told from oil stain by its look, and oil stain is what burns.
  stain: [...FILM, ['oily-cloth'], ['vapor', 'maybe']],
  'base-color': [...FILM, ['vapor', OILY_COLOR], ['oily-cloth', OILY_COLOR]],
  'grain-filler': [
    ['vapor', 'maybe'],
    ['oily-cloth', 'maybe'],
  ],
};

/** Laid with whatever she lays her top coat with, unless the step says by hand or by spray. */
const AS_SHE_COATS: readonly Means[] = ['same', 'same-in-gloss', 'tinted-same', 'water-based'];
/**
 * Paper coarser than this P grade is taken to go through a film into what lies below it; this and finer ones dull the
 * film, and come to an old layer only where they rub an edge through. P320 is what the trade scuffs a film with between
 * coats; that the line lies there is our choice, no source. No stop hangs on it: dust of old paint harms from any paper,
 * so each rule on an old film names both hazards (`test/content/real/fine-paper.test.ts`). It only lets a rule tell more
 * of the layers below before paper that surely reaches them.
 */
const COARSE_BELOW = 320;

/** What a step works with: its cloth, product, tool or what it tries. */
export const meansOf = (step: Step): readonly Means[] => {
  switch (step.kind) {
    case 'wipe':
      return [step.with];
    case 'strip':
      return [step.with];
    case 'coat':
      return [step.product];
    case 'test-patch':
      return [step.tries];
    case 'mix':
      return step.what === 'wood-bleach' ? ['wood-bleach'] : [];
    default:
      return [];
  }
};

const MIXES: Readonly<Record<Extract<Step, { kind: 'mix' }>['what'], Does>> = {
  stir: OPENED,
  // Who wipes a smear on glass has a cloth to get rid of.
  smear: [...OPENED, ...COMES_OFF.same],
  tint: [['tint'], ...OPENED],
  thin: [['thin'], ...OPENED, ['solvent-on-skin', SOLVENT_BORNE]],
  extender: [['extend'], ...OPENED],
  // What was in the old can has to go somewhere.
  'fresh-batch': [['waste'], ...OPENED],
  'wood-bleach': [],
};

const byKind = (step: Step): Does => {
  switch (step.kind) {
    case 'sand':
      return [['dust'], [step.grit < COARSE_BELOW ? 'old-film' : 'old-film-in-reach']];
    case 'scrape':
      if (step.tool === 'tweezers' || step.tool === 'soft-brush') return [];
      return [
        ...(step.tool === 'plastic-scraper' ? [] : ([['blade']] as const)),
        ['old-film'],
        // How soft it is below its skin is seen only once it is cut.
        ...COMES_OFF.same,
      ];
    case 'strip':
      return [
        ['old-film'],
        ...(step.with === 'scraper-and-sanding' ? ([['dust'], ['blade']] as const) : []),
        ...(step.with === 'solvent' ? ([['much-vapor']] as const) : []),
        ...COMES_OFF.same,
      ];
    case 'mix':
      return MIXES[step.what];
    case 'wipe':
      // A coat is washed off a whole face with its thinner.
      if (step.with === 'thinner') return [['much-vapor', { not: WATER_BORNE }]];
      // The dust of a young film heats up in the bag.
      return step.with === 'vacuum' && !step.of ? COMES_OFF.same : [];
    default:
      return [];
  }
};

const spraying = (step: Step): Does => {
  const by = step.kind === 'coat' || step.kind === 'wipe' || step.kind === 'test-patch' ? step.by : undefined;
  const [means] = meansOf(step);
  const coat = step.kind === 'coat';
  if (by === 'spray' || means === 'mist-of-same')
    return [['mist'], ...(coat ? ([['sprayed-coat']] as const) : [])];
  const laid = coat || step.kind === 'test-patch';
  if (by === 'hand' || !laid || !means || !AS_SHE_COATS.includes(means)) return [];
  return [['mist', SPRAYED], ...(coat ? ([['sprayed-coat', SPRAYED]] as const) : [])];
};

const strongest = (one: Truth | undefined, other: Truth): Truth =>
  one === 'yes' || other === 'yes' ? 'yes' : one === 'unknown' || other === 'unknown' ? 'unknown' : 'no';

const listed = new WeakMap<Step, Does>();

/** All that a step can do, each with the facts that it hangs on. Steps are never changed, so each is listed once. */
export const doings = (step: Step): Does => {
  const does = listed.get(step) ?? [
    ...(step.does ?? []).map((hazard) => [hazard] as const),
    ...byKind(step),
    ...('of' in step && step.of && step.of !== 'stain' ? COMES_OFF[step.of] : []),
    ...meansOf(step).flatMap((means) => DOES[means]),
    ...spraying(step),
  ];
  listed.set(step, does);
  return does;
};

const hangsOnFacts = (step: Step): boolean =>
  doings(step).some(([, when]) => when !== undefined && when !== 'maybe');

/** The hazards that a step can have, and the facts that each hangs on. */
export const factsOfStep = (step: Step): ReadonlyMap<Hazard, readonly string[]> => {
  const found = new Map<Hazard, readonly string[]>();
  for (const [hazard, when] of doings(step)) {
    const facts = when && when !== 'maybe' ? [...factsIn(when)].map(({ fact }) => fact) : [];
    found.set(hazard, [...(found.get(hazard) ?? []), ...facts]);
  }
  return found;
};

/** The hazards that are known of a step, for some facts at least: those that a can which nobody named only may have are none. */
export const toldBy = (step: Step): ReadonlySet<Hazard> =>
  new Set(doings(step).flatMap(([hazard, when, perhaps]) => (when === 'maybe' || perhaps ? [] : [hazard])));

/** What a step does whatever the facts. */
export const surelyOf = (step: Step): ReadonlySet<Hazard> =>
  new Set(doings(step).flatMap(([hazard, when]) => (when === undefined ? [hazard] : [])));

const truths = (step: Step, ask: Ask): ReadonlyMap<Hazard, Truth> => {
  const found = new Map<Hazard, Truth>();
  for (const [hazard, when, perhaps] of doings(step)) {
    const met = when === undefined ? 'yes' : when === 'maybe' ? 'unknown' : ask(when);
    const truth = perhaps && met === 'yes' ? 'unknown' : met;
    if (truth !== 'no') found.set(hazard, strongest(found.get(hazard), truth));
  }
  return found;
};

/**
 * What a step does in this case, the top coat being one of `families` where the case does not tell: `yes`, or `unknown`
 * where it hangs on facts that are not known. What it surely does not do is left out.
 */
export const hazardsOf = (
  known: Knows<AnswerReads>,
  on: Case,
  step: Step,
  families: readonly Family[] = [],
): ReadonlyMap<Hazard, Truth> => {
  const of = (one: Case) => {
    const lookup = lookupIn(known, one);
    return truths(step, (condition) => holds(condition, lookup));
  };
  if (on['family'] || !families.length || !hangsOnFacts(step)) return of(on);
  const each = families.map((family) => of(withFact(on, 'family', family)));
  const found = new Map<Hazard, Truth>();
  for (const hazard of new Set(each.flatMap((one) => [...one.keys()]))) {
    const all = each.map((one) => one.get(hazard) ?? 'no');
    found.set(hazard, all.every((truth) => truth === 'yes') ? 'yes' : 'unknown');
  }
  return found;
};
