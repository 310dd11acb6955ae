import { type AnswerReads, lookupIn } from '../case/answers.ts';
import type { Case } from '../case/case.ts';
import { holds } from '../case/condition.ts';
import type { Knows } from '../knowledge/knowledge.ts';
import type { Hands } from '../model/hands.ts';
import type { Step } from '../model/step.ts';
import { isHerCoat, isHersByHand } from './her-own.ts';
import { isOnlyAPlace } from './only-a-place.ts';

/** What is said beside a step: how to do it with what was told, how she knows that it is done, and what if not. */
export type ByHand = {
  readonly how?: string;
  readonly done?: string;
  readonly ifNot?: string;
};

const rowsFor = (hands: Hands, step: Step): Hands['laying'] => {
  if (step.kind === 'sand') return hands.sanding;
  if (isHersByHand(step)) return hands['by-hand'];
  return isHerCoat(step) ? hands.laying : [];
};

/**
 * How a step of this kind is known to be done; a primer dabbed on is not wet all over, and a leveled spot not dull all
 * over.
 */
const endOf = ({ done }: Hands, step: Step): Hands['done'][keyof Hands['done']] =>
  step['worked-if'] !== undefined ||
  (step.kind === 'coat' && !isHerCoat(step)) ||
  (step.kind === 'sand' && isOnlyAPlace(step.say))
    ? undefined
    : done[step.kind as keyof Hands['done']];

/** The hands for a step of this case; empty where nothing that was told bears on it. Pure. */
export const byHand = (known: Knows<AnswerReads>, hands: Hands, on: Case, step: Step): ByHand => {
  const told = (when: Hands['laying'][number]['when']): boolean => holds(when, lookupIn(known, on)) === 'yes';
  const row = rowsFor(hands, step).find(({ when }) => told(when));
  const end = endOf(hands, step);
  const ended = end && (!end.when || told(end.when)) ? end : undefined;
  return { ...(row && { how: row.say }), ...(ended && { done: ended.say, ifNot: ended['if-not'] }) };
};
