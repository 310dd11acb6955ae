import type { AnswerReads } from '../case/answers.ts';
import type { Case } from '../case/case.ts';
import type { Knows } from '../knowledge/knowledge.ts';
import type { FiringRule, Rules } from '../rules/rules.ts';
import { resolve, type StepReads } from '../steps/resolve.ts';
import type { Decided } from './walk.ts';

/**
 * The remedies whose steps are told where a walk stands: of an outcome the repair, of repairs that only begin alike the
 * one that tells the beginning, of a cause alone all that fit.
 */
export const remediesTold = (walked: Decided<unknown>): readonly string[] => {
  if (walked.kind === 'outcome' && walked.shared) return [walked.shared.remedy];
  const told = walked.kind === 'cause' || (walked.kind === 'outcome' && walked.action.do === 'repair');
  return told ? [...new Set(walked.leaves.flatMap((leaf) => ('remedy' in leaf ? [leaf.remedy] : [])))] : [];
};

/** The cautions that fired and stand before none of the steps told: they stand by themselves, each once. */
export const cautionsApart = <R extends FiringRule>(
  known: Rules<R> & Knows<AnswerReads & StepReads>,
  on: Case,
  walked: Decided<R>,
): readonly R[] => {
  const shared = walked.kind === 'outcome' ? walked.shared : undefined;
  const before = new Set(
    remediesTold(walked).flatMap((remedy) =>
      resolve(known, remedy, on, walked.families)
        .filter(({ at }) => !shared || shared.at.includes(at))
        .flatMap((step) => step.before.map(({ id }) => id)),
    ),
  );
  return walked.fired.cautions.filter(({ id }) => !before.has(id));
};
