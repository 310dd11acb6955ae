import { factsIn, holds } from '#engine/case/condition.ts';
import type { ConditionInput } from '#engine/model/condition.ts';
import { TOLD, TOLD_FACTS } from '../shared/told.ts';

/** The facts of the piece that would settle one of these stops by themselves; each is asked once. */
export const askedBy = (stops: readonly { when?: ConditionInput | undefined }[]): readonly string[] => {
  return TOLD_FACTS.filter((fact) =>
    stops.some(
      ({ when }) =>
        when &&
        [...factsIn(when)].some((one) => one.fact === fact) &&
        Object.keys(TOLD[fact].values).some(
          (value) => holds(when, (name) => (name === fact ? value : undefined)) === 'no',
        ),
    ),
  );
};
