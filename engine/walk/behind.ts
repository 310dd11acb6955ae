import type { AnswerReads } from '../case/answers.ts';
import { emptyCase } from '../case/case.ts';
import { factsIn } from '../case/condition.ts';
import type { TreeReads } from '../compiled/trees.ts';
import type { Knows } from '../knowledge/knowledge.ts';
import type { Step } from '../model/step.ts';
import { factsOfStep } from '../rules/hazards.ts';
import { type FiringRule, isOfSteps, type RuleEntry, type Rules } from '../rules/rules.ts';
import type { ResolvedStep, StepReads } from '../steps/resolve.ts';
import { possible } from './leaves.ts';

/** Steps that lie open or closed together. What comes after a stop is closed until it is settled. */
export type Stretch = {
  readonly steps: readonly ResolvedStep[];
  /** The stops that stand before it now; none, and it is open. */
  readonly stops: readonly RuleEntry[];
};

const isStop = ({ kind }: Pick<FiringRule, 'kind'>): boolean => kind === 'stop';

/** The rules that can stand before a step, for some facts at least. */
const canGuard = <R extends FiringRule>(
  known: { readonly rules: readonly R[] },
  step: Step,
): readonly R[] => {
  const does = factsOfStep(step);
  return known.rules.filter(({ hazards }) => hazards.some((hazard) => does.has(hazard)));
};

/**
 * A remedy's resolved steps in stretches: a new one begins at every step that a stop stands before, or can come to stand
 * before when more is told, so that a page built for unknown facts has its place for it.
 */
export const stretches = (
  known: Rules & Knows<StepReads>,
  remedy: string,
  steps: readonly ResolvedStep[],
): readonly Stretch[] => {
  const all = known.get('remedy', remedy).steps;
  const met = new Set<string>();
  const found: { steps: ResolvedStep[]; stops: RuleEntry[] }[] = [{ steps: [], stops: [] }];
  for (const step of steps) {
    const source = all[step.at];
    const coming = source ? canGuard(known, source).filter((rule) => isStop(rule) && isOfSteps(rule)) : [];
    const here = step.before.filter(isStop);
    const isNew = coming.some(({ id }) => !met.has(id)) || here.length > 0;
    for (const { id } of coming) met.add(id);
    if (isNew && found.at(-1)?.steps.length) found.push({ steps: [], stops: [] });
    found.at(-1)?.steps.push(step);
    found.at(-1)?.stops.push(...here);
  }
  return found;
};

/**
 * The facts that the stops and cautions of a remedy hang on, and what a step gives way to, each at the first step that
 * needs it, by the step's place in the remedy. What is asked there once need not be asked again.
 */
export const asksOf = (
  known: Rules<FiringRule & Pick<RuleEntry, 'level'>> & Knows<StepReads>,
  remedy: string,
  steps: readonly ResolvedStep[],
): ReadonlyMap<number, readonly string[]> => {
  const all = known.get('remedy', remedy).steps;
  const met = new Set<string>();
  const asks = new Map<number, readonly string[]>();
  for (const { at } of steps) {
    const step = all[at];
    if (!step) continue;
    const does = factsOfStep(step);
    const facts = canGuard(known, step)
      .filter(({ kind, level }) => kind === 'stop' || (kind === 'caution' && level !== 'note'))
      .flatMap(({ hazards, when }) => [
        ...hazards.flatMap((hazard) => does.get(hazard) ?? []),
        ...(when ? [...factsIn(when)].map(({ fact }) => fact) : []),
      ]);
    // Where another step can stand in for it, what decides that is asked too.
    if (step.except) facts.push(...[...factsIn(step.except)].map(({ fact }) => fact));
    const fresh = [...new Set(facts)].filter((fact) => !met.has(fact));
    for (const fact of fresh) met.add(fact);
    if (fresh.length) asks.set(at, fresh);
  }
  return asks;
};

/** Whether any way of a flaw's tree ends in steps that can break into an older layer, hand-overs followed. */
export const disturbsOldFilm = (known: Knows<TreeReads & AnswerReads & StepReads>, defect: string): boolean =>
  possible(known, emptyCase(), defect).leaves.some(
    (leaf) =>
      'remedy' in leaf &&
      known.get('remedy', leaf.remedy).steps.some((step) => {
        const does = factsOfStep(step);
        return does.has('old-film') || does.has('old-film-in-reach');
      }),
  );
