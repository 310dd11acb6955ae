import { lookupIn } from './answers.ts';
import { type Case, withFact } from './case.ts';
import { holds } from './condition.ts';
import type { Knowledge } from './knowledge.ts';
import type { Family } from './model/family.ts';
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

/** What a step works with, for rules that name it: its cloth, tool, product or way. */
export const meansOf = (step: Step): string | undefined => {
  switch (step.kind) {
    case 'wipe':
    case 'strip':
      return step.with;
    case 'scrape':
      return step.tool;
    case 'coat':
      return step.product;
    case 'mix':
      return step.what;
    default:
      return undefined;
  }
};

const matches = (rule: RuleEntry, step: Step): boolean => {
  if (!rule.steps.includes(step.kind)) return false;
  if (rule.with.length && !rule.with.includes(meansOf(step) ?? '')) return false;
  return !(rule['coarser-than'] && step.kind === 'sand' && step.grit >= rule['coarser-than']);
};

const byFacts = (known: Knowledge, on: Case, rule: RuleEntry): boolean => {
  if (!rule.when) return true;
  const truth = holds(rule.when, lookupIn(known, on));
  return truth === 'yes' || (truth === 'unknown' && rule['unless-known-no']);
};

const stepRule = (rule: RuleEntry): boolean => rule.steps.length > 0;

/** The rules that come before one step. */
export const rulesForStep = (known: Knowledge, on: Case, step: Step): readonly RuleEntry[] =>
  known.rules.filter((rule) => stepRule(rule) && matches(rule, step) && byFacts(known, on, rule));

const inOrder = (fired: readonly RuleEntry[]): Fired => {
  const byKind = (kind: RuleEntry['kind']) => fired.filter((rule) => rule.kind === kind);
  return {
    stops: byKind('stop'),
    holds: byKind('hold'),
    cautions: byKind('caution'),
    adjustments: byKind('adjustment'),
  };
};

const fires = (known: Knowledge, on: Case, ahead: readonly Step[], rule: RuleEntry): boolean =>
  (!stepRule(rule) || ahead.some((step) => matches(rule, step))) && byFacts(known, on, rule);

/** All rules that fire for a case and the steps that lie ahead. No tree can switch one off. */
export const fire = (known: Knowledge, on: Case, ahead: readonly Step[]): Fired =>
  inOrder(known.rules.filter((rule) => fires(known, on, ahead, rule)));

/**
 * As `fire`; where the kind of top coat is not known, what fires for every kind that it can be is added, and what fires
 * for none is left out: a flaw that only oil shows is warned of as oil.
 */
export const fireFor = (
  known: Knowledge,
  on: Case,
  ahead: readonly Step[],
  families: readonly Family[],
): Fired => {
  if (on['family'] || !families.length) return fire(known, on, ahead);
  const each = families.map((family) => withFact(on, 'family', family));
  return inOrder(
    known.rules.filter((rule) => {
      const withKind = (of: Case) => fires(known, of, ahead, rule);
      return fires(known, on, ahead, rule) ? each.some(withKind) : each.every(withKind);
    }),
  );
};
