import { type AnswerReads, lookupIn } from '../case/answers.ts';
import { type Case, withFact } from '../case/case.ts';
import { holds, type Truth } from '../case/condition.ts';
import type { Knows } from '../knowledge/knowledge.ts';
import type { Family } from '../model/family.ts';
import type { Remedy } from '../model/remedy.ts';
import type { Stage } from '../model/stage.ts';
import type { Step, StepKind } from '../model/step.ts';
import { type FiringRule, type RuleEntry, type Rules, rulesForStep } from '../rules/rules.ts';
import { contradicted } from './contradictions.ts';

/** The steps of each remedy. */
export type StepReads = { readonly remedy: Pick<Remedy, 'steps'> };

/** A step made ready for this case. */
export type ResolvedStep<R = RuleEntry> = {
  readonly kind: StepKind;
  /** Its place in the remedy, from 0: steps that are left out leave a gap. */
  readonly at: number;
  readonly say: string;
  /** Printed with P, as on the back of the sheet. */
  readonly grit?: string;
  readonly strokes?: number;
  readonly until?: Stage;
  readonly hours?: readonly [number, number];
  readonly percent?: readonly [number, number];
  readonly workedIf?: string;
  /** Cautions and stops that stand before this step; each is told once, before the first step it belongs to. */
  readonly before: readonly R[];
  /** Limits for this step. */
  readonly limits: readonly R[];
  /** The step holds only for some facts, and these are not known: say so. */
  readonly only: boolean;
};

/** What is left of a wait that counts from the coat, its age taken off; undefined where nothing is known or left. */
const hoursLeft = (on: Case, step: Step & { kind: 'wait' }): readonly [number, number] | undefined => {
  const { hours, from } = step;
  const age = on['hours-since-coat']?.value;
  if (!hours || from !== 'coat' || typeof age !== 'number') return hours;
  const [least, most] = hours;
  return age >= most ? undefined : [Math.max(0, Math.round(least - age)), Math.ceil(most - age)];
};

/** A wait that is over: its hours have passed, and it asks for no stage that a touch must show first. */
const hasPassed = (on: Case, step: Step): boolean =>
  step.kind === 'wait' && step.hours !== undefined && !step.until && hoursLeft(on, step) === undefined;

/**
 * Whether a step is taken in this case, the top coat being one of `families`; unknown where its condition hangs on facts
 * that are not known. A step that what is told speaks against is never taken.
 */
export const takingOf = (
  known: Knows<AnswerReads>,
  on: Case,
  step: Step,
  families: readonly Family[] = [],
): Truth => {
  const { when } = step;
  if (contradicted(step, (told) => holds(told, lookupIn(known, on)))) return 'no';
  if (step.except && holds(step.except, lookupIn(known, on)) === 'yes') return 'no';
  if (hasPassed(on, step)) return 'no';
  if (!when) return 'yes';
  const cases = on['family'] || !families.length ? [on] : families.map((one) => withFact(on, 'family', one));
  const [first = 'unknown', ...others] = cases.map((of) => holds(when, lookupIn(known, of)));
  return others.every((other) => other === first) ? first : 'unknown';
};

const idle = ({ kind }: Step): boolean => kind === 'wait' || kind === 'look';

/**
 * Whether a wait for the film that lies there is over, since that is told to be cured: it stands before all work, and
 * asks for no hours of its own and no warmth. Where the wait is all that is done, it is the repair.
 */
const isOver = (on: Case, steps: readonly Step[], at: number): boolean => {
  const step = steps[at];
  if (step?.kind !== 'wait' || on.stage?.value !== 'cured' || step.does?.includes('heat')) return false;
  const own = step.hours && (step.from !== 'coat' || typeof on['hours-since-coat']?.value === 'number');
  if (!step.until || (own && hoursLeft(on, step))) return false;
  return steps.slice(0, at).every(idle) && !steps.every(idle);
};

/** A step that is taken, or may be, with its place among all of a remedy. */
type Taken = { readonly step: Step; readonly at: number; readonly fits: Exclude<Truth, 'no'> };

/** The steps of a remedy that are taken in a case, or may be. */
export const takenOf = (
  known: Knows<AnswerReads & StepReads>,
  on: Case,
  remedy: string,
  families: readonly Family[] = [],
): readonly Taken[] => {
  const { steps } = known.get('remedy', remedy);
  return steps.flatMap((step, at) => {
    const fits = takingOf(known, on, step, families);
    return fits === 'no' || isOver(on, steps, at) ? [] : [{ step, at, fits }];
  });
};

/**
 * A remedy's steps for a case: steps that the facts rule out are left out, cautions stand before their step. `families`
 * are the kinds of top coat that it can be, where the case does not tell; none named is any.
 */
export const resolve = <R extends FiringRule>(
  known: Rules<R> & Knows<AnswerReads & StepReads>,
  remedy: string,
  on: Case,
  families: readonly Family[] = [],
): readonly ResolvedStep<R>[] => {
  const told = new Set<string>();
  return takenOf(known, on, remedy, families).map(({ step, at, fits }) => {
    const rules = rulesForStep(known, on, step, families);
    const before = rules.filter((rule) => rule.kind !== 'adjustment' && !told.has(rule.id));
    for (const rule of before) told.add(rule.id);
    return ready(
      on,
      step,
      at,
      before,
      rules.filter((rule) => rule.kind === 'adjustment'),
      fits === 'unknown',
    );
  });
};

const hoursOf = (on: Case, step: Step): { readonly hours?: readonly [number, number] } => {
  const hours =
    step.kind === 'wait' ? hoursLeft(on, step) : step.kind === 'test-patch' ? step.hours : undefined;
  return hours ? { hours } : {};
};

const ready = <R>(
  on: Case,
  step: Step,
  at: number,
  before: readonly R[],
  limits: readonly R[],
  only: boolean,
): ResolvedStep<R> => ({
  kind: step.kind,
  at,
  say: step.say,
  ...(step['worked-if'] ? { workedIf: step['worked-if'] } : {}),
  ...(step.kind === 'sand' ? { grit: `P${step.grit}` } : {}),
  ...(step.kind === 'sand' && step.strokes ? { strokes: step.strokes } : {}),
  ...(step.kind === 'wait' && step.until ? { until: step.until } : {}),
  ...hoursOf(on, step),
  ...(step.kind === 'mix' && step.percent ? { percent: step.percent } : {}),
  before,
  limits,
  only,
});
