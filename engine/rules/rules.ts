import { type AnswerReads, lookupIn } from '../case/answers.ts';
import { type Case, withFact } from '../case/case.ts';
import type { Truth } from '../case/condition.ts';
import { rulesOf } from '../compiled/compiled.ts';
import { codeOf, codesOf } from '../compiled/fact-codes.ts';
import { type Conditioned, hasBit, markHolding, type RuleTable } from '../compiled/rules.ts';
import type { Knows } from '../knowledge/knowledge.ts';
import type { Family } from '../model/family.ts';
import type { Hazard } from '../model/hazard.ts';
import type { Entry } from '../model/knowledge.ts';
import type { Rule } from '../model/rule.ts';
import type { Step } from '../model/step.ts';
import { hazardsOf } from './hazards.ts';

export type RuleEntry = Entry<'rule'>;
/** What is read of a rule to know whether it fires, and as what. */
export type FiringRule = Conditioned &
  Pick<Rule, 'kind' | 'hazards' | 'sure' | 'always'> & { readonly id: string };
/** One that is told to somebody who lays a coat. */
export type SaidRule = FiringRule & Pick<Rule, 'title' | 'say' | 'lead'>;
/** Rules with what a page says of them. */
export type Rules<R extends FiringRule = FiringRule> = { readonly rules: readonly R[] };
/** What is read to fire rules: them, and the questions whose answers follow from facts. */
export type Firing<R extends FiringRule = FiringRule> = Rules<R> & Knows<AnswerReads>;

/** Rules that fired, by authority: a stop comes before everything, a hold before any step. */
export type FiredRules<R = RuleEntry> = {
  readonly stops: readonly R[];
  readonly holds: readonly R[];
  readonly cautions: readonly R[];
  readonly adjustments: readonly R[];
};

/** Whether a rule stands before a step that does these. */
const guards = (rule: FiringRule, does: ReadonlyMap<Hazard, Truth>): boolean =>
  rule.hazards.some((hazard) => {
    const truth = does.get(hazard);
    return truth !== undefined && (!rule.sure || (rule.sure === 'yes') === (truth === 'yes'));
  });

/** Whether a rule belongs to steps, and not to what is told of the piece alone. */
export const isOfSteps = (rule: Pick<RuleEntry, 'hazards' | 'always'>): boolean =>
  rule.hazards.length > 0 && !rule.always;

/**
 * Whether only the words of a post call for a rule: it hangs on no fact and no step, and tells what to do once something
 * has happened.
 */
export const isHeardAlone = ({ hazards, when }: Pick<FiringRule, 'hazards' | 'when'>): boolean =>
  hazards.length === 0 && !when;

const bitsOf = (table: RuleTable, codes: Uint8Array): Uint32Array => {
  const bits = new Uint32Array(table.stride);
  markHolding(table, codes, bits);
  return bits;
};

/**
 * The codes of the case with another kind of top coat; only it, and answers that may follow from it, are looked up
 * anew.
 */
const codesWith = (known: Knows<AnswerReads>, table: RuleTable, codes: Uint8Array, on: Case): Uint8Array => {
  const lookup = lookupIn(known, on);
  return codes.map((code, at) => {
    const fact = table.facts[at]!;
    return fact.name === 'family' || known.has('question', fact.name)
      ? codeOf(fact, lookup(fact.name))
      : code;
  });
};

/**
 * The rules whose facts hold, by their places among all, in every case that this one may turn out to be: where the kind
 * of top coat is not known, what holds for every kind that it can be holds, and what holds for none does not. A flaw that
 * only oil shows is warned of as oil.
 */
const rulesByFacts = (known: Firing, on: Case, families: readonly Family[]): readonly number[] => {
  const table = rulesOf(known);
  const codes = codesOf(table.facts, lookupIn(known, on));
  const bits = bitsOf(table, codes);
  const each = on['family']
    ? []
    : families.map((family) => bitsOf(table, codesWith(known, table, codes, withFact(on, 'family', family))));
  return [...known.rules.entries()].flatMap(([bit, rule]) => {
    if (isHeardAlone(rule)) return [];
    const holds = (of: Uint32Array) => hasBit(of, bit);
    const fires = !each.length ? holds(bits) : holds(bits) ? each.some(holds) : each.every(holds);
    return fires ? [bit] : [];
  });
};

/** Cases are never changed, so what was found for one stays right. */
const found = new WeakMap<Firing, WeakMap<Case, Map<string, readonly number[]>>>();

const holding = <R extends FiringRule>(
  known: Firing<R>,
  on: Case,
  families: readonly Family[],
): readonly R[] => {
  const byCase = found.get(known) ?? new WeakMap<Case, Map<string, readonly number[]>>();
  found.set(known, byCase);
  const byFamilies = byCase.get(on) ?? new Map<string, readonly number[]>();
  byCase.set(on, byFamilies);
  const key = families.join();
  const rules = byFamilies.get(key) ?? rulesByFacts(known, on, families);
  byFamilies.set(key, rules);
  return rules.flatMap((at) => known.rules[at] ?? []);
};

/** The rules that come before one step, the top coat being one of `families`; of any kind where none is named. */
export const rulesForStep = <R extends FiringRule>(
  known: Firing<R>,
  on: Case,
  step: Step,
  families: readonly Family[] = [],
): readonly R[] => {
  const does = hazardsOf(known, on, step, families);
  return holding(known, on, families).filter((rule) => isOfSteps(rule) && guards(rule, does));
};

/**
 * All rules that fire for a case and the steps that lie ahead, the top coat being one of `families`. No tree can switch
 * one off.
 */
export const fire = <R extends FiringRule>(
  known: Firing<R>,
  on: Case,
  ahead: readonly Step[],
  families: readonly Family[] = [],
): FiredRules<R> =>
  firedBefore(
    known,
    on,
    ahead.map((step) => hazardsOf(known, on, step, families)),
    families,
  );

/** The same for steps of which it is known what each does in this case. */
export const firedBefore = <R extends FiringRule>(
  known: Firing<R>,
  on: Case,
  does: readonly ReadonlyMap<Hazard, Truth>[],
  families: readonly Family[],
): FiredRules<R> => {
  const fired = holding(known, on, families).filter(
    (rule) => !isOfSteps(rule) || does.some((one) => guards(rule, one)),
  );
  const byKind = (kind: R['kind']) => fired.filter((rule) => rule.kind === kind);
  return {
    stops: byKind('stop'),
    holds: byKind('hold'),
    cautions: byKind('caution'),
    adjustments: byKind('adjustment'),
  };
};
