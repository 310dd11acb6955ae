import type { AnswerReads } from '../case/answers.ts';
import type { Case } from '../case/case.ts';
import type { Knows } from '../knowledge/knowledge.ts';
import type { Family } from '../model/family.ts';
import type { Step } from '../model/step.ts';
import { type StepReads, takenOf } from '../steps/resolve.ts';
import type { Leaf } from './leaves.ts';

/** The first steps that every repair still possible begins with, as the first of them tells these. */
export type SharedSteps = {
  readonly remedy: string;
  /** Their places in that remedy, from 0. */
  readonly at: readonly number[];
};

/** What hands do not feel of a step: its words, and whom it is for. */
const NOT_OF_HANDS: readonly string[] = ['say', 'worked-if', 'when', 'except', 'does'];

/** What makes two steps the same for hands: what is done and with what. */
const handsOf = (step: Step): string =>
  JSON.stringify(
    Object.entries(step)
      .filter(([field]) => !NOT_OF_HANDS.includes(field))
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );

/** A step that brings the repair on; waiting and looking alone are no beginning. */
const isWork = (step: Step): boolean => step.kind !== 'wait' && step.kind !== 'look';

/**
 * What to begin with where causes that can not be told apart ask for different repairs that begin alike. Undefined where
 * one of them is to leave it, or where nothing but waiting is shared. No coat is laid on a guess: it ends before one.
 */
export const sharedSteps = (
  known: Knows<AnswerReads & StepReads>,
  on: Case,
  leaves: readonly Leaf[],
  families: readonly Family[],
): SharedSteps | undefined => {
  const remedies = [...new Set(leaves.flatMap((leaf) => ('remedy' in leaf ? leaf.remedy : [])))];
  const [first] = remedies;
  if (!first || !leaves.every((leaf) => 'remedy' in leaf)) return undefined;
  const each = remedies.map((remedy) => takenOf(known, on, remedy, families));
  const [mine = [], ...others] = each;
  const end = mine.findIndex(
    ({ step }, index) =>
      step.kind === 'coat' ||
      others.some((steps) => {
        const other = steps[index];
        return !other || handsOf(other.step) !== handsOf(step);
      }),
  );
  const shared = end < 0 ? mine : mine.slice(0, end);
  return shared.some(({ step }) => isWork(step))
    ? { remedy: first, at: shared.map(({ at }) => at) }
    : undefined;
};
