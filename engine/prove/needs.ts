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
/**
 * Bare wood with coats of a count that she told: those of this job, whichever is the last. What holds of the first coat
 * holds of the second, since no layer grows older below it. Common practice, no source.
 */
const HER_COATS_ON_BARE_WOOD: ConditionInput = { base: 'bare-wood', 'coat-number': { above: 0 } };
const OLD_BELOW = [NEW, OLD, ON_BARE_WOOD, HER_COATS_ON_BARE_WOOD];
const WATER_BORNE: ConditionInput = { family: ['water-based', 'water-lacquer'] };
const SPRAY_CAN: ConditionInput = { applicator: 'aerosol' };
const ISOCYANATE: ConditionInput = { hardener: 'isocyanate' };
const ACID: ConditionInput = { hardener: 'acid' };
const OF_CHILDREN: ConditionInput = { piece: ['crib', 'childs-item'] };
const OF_FOOD: ConditionInput = { piece: 'food-surface' };

type Need = {
  /** All that decides how much is asked: the cases that are looked at are taken from it. */
  readonly on: readonly ConditionInput[];
  /** What must stand before a step that surely does it. Unknown counts as yes. */
  readonly surely: (is: (condition: ConditionInput) => boolean) => readonly Weight[];
  /** What must stand where the step may do it, by facts that are not known; as much as surely where left out. */
  readonly maybe?: readonly Weight[];
};

const always = (...weights: readonly Weight[]): Need => ({ on: [], surely: () => weights });

/**
 * Nothing old lies below: so it was told, or all coats are hers on bare wood and nobody told of old paint. Wood that old
 * paint came off may hold its lead, so the age of that counts before the bare wood.
 */
const stopsUnlessNew: Need['surely'] = (is) =>
  is(NEW) || ((is(ON_BARE_WOOD) || is(HER_COATS_ON_BARE_WOOD)) && !is(OLD)) ? [] : ['stop'];

/** What each hazard calls for, written apart from the rules, so that a rule that fails it is found. */
export const NEEDS: Readonly<Record<Hazard, Need>> = {
  'old-film': { on: OLD_BELOW, surely: stopsUnlessNew },
  // Sanding disturbs a painted surface however fine the paper is.
  'old-film-in-reach': { on: OLD_BELOW, surely: stopsUnlessNew },
  // The dust of a two-part film can still hold what its hardener is made of: not before full cure, and then as any dust.
  dust: {
    on: [ISOCYANATE],
    surely: (is) => (is(ISOCYANATE) ? ['stop', 'care', 'care'] : ['care']),
  },
  blade: always('care'),
  mist: {
    // The gas of a spray can burns, whatever finish is in it.
    on: [WATER_BORNE, SPRAY_CAN],
    surely: (is) => (is(WATER_BORNE) && !is(SPRAY_CAN) ? ['care'] : ['stop', 'care']),
    maybe: ['care'],
  },
  'sprayed-coat': {
    on: [SPRAY_CAN],
    surely: (is) => (is(SPRAY_CAN) ? ['care'] : []),
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
    on: [OF_CHILDREN, OF_FOOD],
    surely: (is) => (is(OF_CHILDREN) ? ['stop'] : is(OF_FOOD) ? ['care'] : []),
  },
  hardener: {
    on: [ISOCYANATE, ACID],
    surely: (is) => (is(ISOCYANATE) ? ['stop'] : is(ACID) ? ['care'] : []),
    maybe: ['care'],
  },
  tint: always('limit'),
  thin: always('limit'),
  extend: always('limit'),
};

/**
 * What a hazard calls for, by how sure it is and what is told. Throws where a need hangs on what it does not name under
 * `on`: its cases would not be looked at.
 */
export const needed = (
  hazard: Hazard,
  truth: Truth,
  is: (condition: ConditionInput) => boolean,
): readonly Weight[] => {
  if (truth === 'no') return [];
  const { on, surely, maybe } = NEEDS[hazard];
  if (truth === 'unknown' && maybe) return maybe;
  return surely((condition) => {
    if (!on.includes(condition))
      throw new Error(`what ${hazard} calls for hangs on ${JSON.stringify(condition)}; name it under "on"`);
    return is(condition);
  });
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
