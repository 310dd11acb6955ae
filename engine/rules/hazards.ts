import { type AnswerReads, lookupIn } from '../case/answers.ts';
import { type Case, withFact } from '../case/case.ts';
import { factsIn, holds, type Truth } from '../case/condition.ts';
import type { Knows } from '../knowledge/knowledge.ts';
import { ASKED } from '../knowledge/known-questions.ts';
import type { ConditionInput } from '../model/condition.ts';
import type { Family } from '../model/family.ts';
import type { Hazard } from '../model/hazard.ts';
import type { Means, Off, Step } from '../model/step.ts';

/** Whether a condition holds for the case at hand. */
type Ask = (condition: ConditionInput) => Truth;
/**
 * One thing that something does: always, or where `when` holds. `perhaps`: a can that nobody has named only may do it.
 */
type Doing = { readonly hazard: Hazard; readonly when?: ConditionInput; readonly perhaps?: true };
type Does = readonly Doing[];

const does = (hazard: Hazard, when?: ConditionInput): Doing => ({ hazard, ...(when && { when }) });
const may = (hazard: Hazard, when?: ConditionInput): Doing => ({ ...does(hazard, when), perhaps: true });

/**
 * Their cans name spirits, alcohol or thinner: paste wax is soft by its solvent, and hardwax oil is thinned with it.
 */
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

const SOLVENT: Does = [does('vapor'), does('solvent-on-skin'), does('waste')];
const FILM: Does = [does('mouth-contact')];
/** A can is opened before anything is stirred or mixed in it: its vapor and its second part begin there. */
const OPENED: Does = [
  does('hardener', HARDENED),
  does('vapor', SOLVENT_BORNE),
  // Linseed holds no spirits, and a blend of oil and varnish does.
  may('vapor', { family: 'oil' }),
];
const FINISH: Does = [
  ...FILM,
  ...OPENED,
  // Denatured alcohol and thinner go through gloves.
  does('solvent-on-skin', { family: ['shellac', 'lacquer'] }),
  does('oily-cloth', HEATS_ITSELF),
];
/** What comes off wet or soft heats up in the cloth, on the paper or as a heap of shavings. */
const COMES_OFF: Readonly<Record<Off, Does>> = {
  oil: [does('oily-cloth')],
  same: [does('oily-cloth', HEATS_ITSELF)],
  'base-color': [does('oily-cloth', OILY_COLOR), does('oily-cloth', HEATS_ITSELF)],
  // The water that rinses it off holds the acid, and so do crystals that dry from it.
  'wood-bleach': [does('oxalic-acid')],
};
const OIL: Does = [
  does('oily-cloth'),
  may('vapor'),
  does('vapor', { family: 'hardwax-oil' }),
  does('hardener', { ...HARDENED, family: 'hardwax-oil' }),
  ...FILM,
];
const WAX: Does = [does('oily-cloth', { [ASKED.tinListsOil]: 'yes' }), does('vapor'), ...FILM];

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
  thinner: SOLVENT.map(({ hazard }) => does(hazard, { not: WATER_BORNE })),
  'fresh-oil': OIL,
  oil: OIL,
  'fresh-wax': WAX,
  'clear-wax': WAX,
  wax: WAX,
  'wood-bleach': [does('oxalic-acid'), does('waste')],
  stripper: [does('stripper'), does('vapor'), does('much-vapor'), does('waste')],
  'scraper-and-sanding': [],
  same: FINISH,
  'same-in-gloss': FINISH,
  'tinted-same': FINISH,
  'mist-of-same': FINISH,
  'water-based': [...FILM, does('hardener', HARDENED)],
  // Denatured alcohol is poisonous in part, and goes through gloves.
  'dewaxed-shellac': [...FILM, does('vapor'), does('solvent-on-skin')],
  'shellac-primer': [...FILM, does('vapor'), does('solvent-on-skin')],
  'stain-blocking-primer': [...FILM, does('vapor'), may('oily-cloth')],
  // Water stain is not told from oil stain by its look, and oil stain is what burns.
  stain: [...FILM, does('oily-cloth'), may('vapor')],
  'base-color': [...FILM, does('vapor', OILY_COLOR), does('oily-cloth', OILY_COLOR)],
  'grain-filler': [may('vapor'), may('oily-cloth')],
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
  tint: [does('tint'), ...OPENED],
  thin: [does('thin'), ...OPENED, does('solvent-on-skin', SOLVENT_BORNE)],
  extender: [does('extend'), ...OPENED],
  // What was in the old can has to go somewhere.
  'fresh-batch': [does('waste'), ...OPENED],
  'wood-bleach': [],
};

const byKind = (step: Step): Does => {
  switch (step.kind) {
    case 'sand':
      return [does('dust'), does(step.grit < COARSE_BELOW ? 'old-film' : 'old-film-in-reach')];
    case 'scrape':
      if (step.tool === 'tweezers' || step.tool === 'soft-brush') return [];
      return [
        ...(step.tool === 'plastic-scraper' ? [] : [does('blade')]),
        does('old-film'),
        // How soft it is below its skin is seen only once it is cut.
        ...COMES_OFF.same,
      ];
    case 'strip':
      return [
        does('old-film'),
        ...(step.with === 'scraper-and-sanding' ? [does('dust'), does('blade')] : []),
        ...(step.with === 'solvent' ? [does('much-vapor')] : []),
        ...COMES_OFF.same,
      ];
    case 'mix':
      return MIXES[step.what];
    case 'wipe':
      // A coat is washed off a whole face with its thinner.
      if (step.with === 'thinner') return [does('much-vapor', { not: WATER_BORNE })];
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
    return [does('mist'), ...(coat ? [does('sprayed-coat')] : [])];
  const laid = coat || step.kind === 'test-patch';
  if (by === 'hand' || !laid || !means || !AS_SHE_COATS.includes(means)) return [];
  return [does('mist', SPRAYED), ...(coat ? [does('sprayed-coat', SPRAYED)] : [])];
};

const listed = new WeakMap<Step, Does>();

/** All that a step can do, each with the facts that it hangs on. Steps are never changed, so each is listed once. */
export const hazardRows = (step: Step): Does => {
  const all = listed.get(step) ?? [
    ...(step.does ?? []).map((hazard) => does(hazard)),
    ...byKind(step),
    ...('of' in step && step.of && step.of !== 'stain' ? COMES_OFF[step.of] : []),
    ...meansOf(step).flatMap((means) => DOES[means]),
    ...spraying(step),
  ];
  listed.set(step, all);
  return all;
};

const hangsOnFacts = (step: Step): boolean => hazardRows(step).some(({ when }) => when !== undefined);

/** The hazards that a step can have, and the facts that each hangs on. */
export const factsOfStep = (step: Step): ReadonlyMap<Hazard, readonly string[]> => {
  const found = new Map<Hazard, readonly string[]>();
  for (const { hazard, when } of hazardRows(step)) {
    const facts = when ? [...factsIn(when)].map(({ fact }) => fact) : [];
    found.set(hazard, [...(found.get(hazard) ?? []), ...facts]);
  }
  return found;
};

/**
 * The hazards that are known of a step, for some facts at least: those that a can which nobody named only may have are
 * none.
 */
export const toldBy = (step: Step): ReadonlySet<Hazard> =>
  new Set(hazardRows(step).flatMap(({ hazard, perhaps }) => (perhaps ? [] : [hazard])));

/** What a step does whatever the facts. */
export const surelyOf = (step: Step): ReadonlySet<Hazard> =>
  new Set(hazardRows(step).flatMap(({ hazard, when, perhaps }) => (when || perhaps ? [] : [hazard])));

const truths = (step: Step, ask: Ask): ReadonlyMap<Hazard, Truth> => {
  const found = new Map<Hazard, Truth>();
  for (const { hazard, when, perhaps } of hazardRows(step)) {
    const met = when ? ask(when) : 'yes';
    const truth = perhaps && met === 'yes' ? 'unknown' : met;
    if (truth === 'yes' || (truth === 'unknown' && !found.has(hazard))) found.set(hazard, truth);
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
