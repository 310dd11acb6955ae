import { type AnswerReads, lookupIn } from './answers.ts';
import type { Case } from './case.ts';
import { holds } from './condition.ts';
import type { Knows } from './knowledge.ts';
import type { Hands } from './model/hands.ts';
import type { Step } from './model/step.ts';

/** What is said beside a step: how to do it with what was told, how she knows that it is done, and what if not. */
export type ByHand = {
  readonly how?: string;
  readonly done?: string;
  readonly ifNot?: string;
};

const HER_OWN = ['same', 'same-in-gloss', 'tinted-same'];

const rowsFor = (hands: Hands, step: Step): Hands['laying'] => {
  if (step.kind === 'sand') return hands.sanding;
  const hers = step.kind === 'coat' && step.by === undefined && HER_OWN.includes(step.product);
  return hers ? hands.laying : [];
};

/** The hands for a step of this case; empty where nothing that was told bears on it. Pure. */
export const byHand = (known: Knows<AnswerReads>, hands: Hands, on: Case, step: Step): ByHand => {
  const row = rowsFor(hands, step).find(({ when }) => holds(when, lookupIn(known, on)) === 'yes');
  const end = step['worked-if'] === undefined ? hands.done[step.kind as keyof Hands['done']] : undefined;
  return { ...(row && { how: row.say }), ...(end && { done: end.say, ifNot: end['if-not'] }) };
};
