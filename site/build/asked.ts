import { factsIn } from '#engine/index.ts';
import type { ConditionInput } from '#engine/model/condition.ts';
import { TOLD_FACTS } from '../shared/told.ts';

/** The facts of the piece that would settle these stops; each is asked once. */
export const askedBy = (stops: readonly { when?: ConditionInput | undefined }[]): readonly string[] => {
  const named = new Set(
    stops.flatMap(({ when }) => (when ? [...factsIn(when)].map(({ fact }) => fact) : [])),
  );
  return TOLD_FACTS.filter((fact) => named.has(fact));
};
