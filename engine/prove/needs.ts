import type { Truth } from '../case/condition.ts';
import type { Weight } from '../faults/issue.ts';
import { ASKED } from '../knowledge/known-questions.ts';
import type { ConditionInput } from '../model/condition.ts';
import type { Hazard } from '../model/hazard.ts';
import type { RuleEntry } from '../rules/rules.ts';

export const weightOf = ({ kind, level }: Pick<RuleEntry, 'kind' | 'level'>): Weight =>
  kind === 'stop' ? 'stop' : kind === 'adjustment' ? 'limit' : level === 'note' ? 'note' : 'care';

const NEW: ConditionInput = { age: 'since-1993' };
const OLD: ConditionInput = { age: ['before-1993', 'unknown'] };
const ON_BARE_WOOD: ConditionInput = { [ASKED.firstCoatOnBareWood]: 'yes' };
const OLD_BELOW = ['age', ASKED.firstCoatOnBareWood];
const WATER_BORNE: ConditionInput = { family: ['water-based', 'water-lacquer'] };

type Need = {
  /** The facts that decide how much is asked. */
  readonly on: readonly string[];
  /** What must stand before a step that surely does it. Unknown counts as yes. */
  readonly surely: (is: (condition: ConditionInput) => boolean) => readonly Weight[];
  /** What must stand where the step may do it, by facts that are not known; as much as surely where left out. */
  readonly maybe?: readonly Weight[];
};

const always = (...weights: readonly Weight[]): Need => ({ on: [], surely: () => weights });

/** Nothing old lies below: so it was told, or it is the first coat on bare wood and nobody told of old paint. */
const stopsUnlessNew: Need['surely'] = (is) => (is(NEW) || (is(ON_BARE_WOOD) && !is(OLD)) ? [] : ['stop']);

/** What each hazard calls for, written apart from the rules, so that a rule that fails it is found. */
export const NEEDS: Readonly<Record<Hazard, Need>> = {
  'old-film': { on: OLD_BELOW, surely: stopsUnlessNew },
  // Sanding disturbs a painted surface however fine the paper is.
  'old-film-in-reach': { on: OLD_BELOW, surely: stopsUnlessNew },
  // The dust of a two-part film can still hold what its hardener is made of: not before full cure, and then as any dust.
  dust: {
    on: ['hardener'],
    surely: (is) => (is({ hardener: 'isocyanate' }) ? ['stop', 'care', 'care'] : ['care']),
  },
  blade: always('care'),
  mist: {
    // The gas of a spray can burns, whatever finish is in it.
    on: ['family', 'applicator'],
    surely: (is) => (is(WATER_BORNE) && !is({ applicator: 'aerosol' }) ? ['care'] : ['stop', 'care']),
    maybe: ['care'],
  },
  'sprayed-coat': {
    on: ['applicator'],
    surely: (is) => (is({ applicator: 'aerosol' }) ? ['care'] : []),
    maybe: [],
  },
  vapor: always('care'),
  // Where only the can tells, the caution on vapor stands.
  'much-vapor': { on: [], surely: () => ['stop'], maybe: [] },
  'solvent-on-skin': always('care'),
  'oily-cloth': { on: [], surely: () => ['stop'], maybe: ['care'] },
  stripper: always('stop', 'care'),
  'oxalic-acid': always('care'),
  caustic: always('stop'),
  heat: always('care'),
  'mold-spores': always('care'),
  waste: always('note'),
  'mouth-contact': {
    on: ['piece'],
    surely: (is) =>
      is({ piece: ['crib', 'childs-item'] }) ? ['stop'] : is({ piece: 'food-surface' }) ? ['care'] : [],
  },
  hardener: {
    on: ['hardener'],
    surely: (is) => (is({ hardener: 'isocyanate' }) ? ['stop'] : is({ hardener: 'acid' }) ? ['care'] : []),
    maybe: ['care'],
  },
  tint: always('limit'),
  thin: always('limit'),
  extend: always('limit'),
};

/** What a hazard calls for, by how sure it is and what is told. */
export const needed = (
  hazard: Hazard,
  truth: Truth,
  is: (condition: ConditionInput) => boolean,
): readonly Weight[] => {
  if (truth === 'no') return [];
  const { surely, maybe } = NEEDS[hazard];
  return truth === 'unknown' && maybe ? maybe : surely(is);
};

/** What is called for and not there; each rule answers once. */
export const missing = (wanted: readonly Weight[], there: readonly Weight[]): readonly Weight[] => {
  const left = [...there];
  return wanted.filter((weight) => {
    const at = left.indexOf(weight === 'note' && !left.includes('note') ? 'care' : weight);
    if (at < 0) return true;
    left.splice(at, 1);
    return false;
  });
};
