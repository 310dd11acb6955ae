import { lookupIn } from './answers.ts';
import { type Case, withFact } from './case.ts';
import { holds, type Truth } from './condition.ts';
import { hazardsOf } from './hazards.ts';
import type { Knowledge } from './knowledge.ts';
import type { Family } from './model/family.ts';
import type { Hazard } from './model/hazard.ts';
import type { Entry } from './model/knowledge.ts';
import type { Step } from './model/step.ts';

export type RuleEntry = Entry<'rule'>;

/** Rules that fired, by authority: a stop comes before everything, a hold before any step. */
export type Fired = {
  readonly stops: readonly RuleEntry[];
  readonly holds: readonly RuleEntry[];
  readonly cautions: readonly RuleEntry[];
  readonly adjustments: readonly RuleEntry[];
};

/** Whether a rule stands before a step that does these. */
const guards = (rule: RuleEntry, does: ReadonlyMap<Hazard, Truth>): boolean =>
  rule.hazards.some((hazard) => {
    const truth = does.get(hazard);
    return truth !== undefined && (!rule.sure || (rule.sure === 'yes') === (truth === 'yes'));
  });

const byFacts = (known: Knowledge, on: Case, rule: RuleEntry): boolean => {
  if (!rule.when) return true;
  const truth = holds(rule.when, lookupIn(known, on));
  return truth === 'yes' || (truth === 'unknown' && rule['unless-known-no']);
};

/** Whether a rule belongs to steps, and not to what is told of the piece alone. */
export const isOfSteps = (rule: Pick<RuleEntry, 'hazards' | 'always'>): boolean =>
  rule.hazards.length > 0 && !rule.always;

/**
 * Asks a question of every case that this one may turn out to be: where the kind of top coat is not known, what holds
 * for every kind that it can be holds, and what holds for none does not. A flaw that only oil shows is warned of as oil.
 */
const whateverKind = (on: Case, families: readonly Family[]) => {
  const each = on['family'] ? [] : families.map((family) => withFact(on, 'family', family));
  return (holds: (of: Case) => boolean): boolean =>
    !each.length ? holds(on) : holds(on) ? each.some(holds) : each.every(holds);
};

/** The rules that come before one step, the top coat being one of `families`; of any kind where none is named. */
export const rulesForStep = (
  known: Knowledge,
  on: Case,
  step: Step,
  families: readonly Family[] = [],
): readonly RuleEntry[] => {
  const certain = whateverKind(on, families);
  const does = hazardsOf(known, on, step, families);
  return known.rules.filter(
    (rule) => isOfSteps(rule) && guards(rule, does) && certain((of) => byFacts(known, of, rule)),
  );
};

/**
 * All rules that fire for a case and the steps that lie ahead, the top coat being one of `families`. No tree can switch
 * one off.
 */
export const fire = (
  known: Knowledge,
  on: Case,
  ahead: readonly Step[],
  families: readonly Family[] = [],
): Fired => {
  const certain = whateverKind(on, families);
  const does = ahead.map((step) => hazardsOf(known, on, step, families));
  const fired = known.rules.filter(
    (rule) =>
      (!isOfSteps(rule) || does.some((one) => guards(rule, one))) &&
      certain((of) => byFacts(known, of, rule)),
  );
  const byKind = (kind: RuleEntry['kind']) => fired.filter((rule) => rule.kind === kind);
  return {
    stops: byKind('stop'),
    holds: byKind('hold'),
    cautions: byKind('caution'),
    adjustments: byKind('adjustment'),
  };
};
