import type { Step } from '../model/step.ts';

type Coat = Step & { readonly kind: 'coat' };

const HER_OWN = ['same', 'same-in-gloss', 'tinted-same'];

/** Whether a step lays a coat of what she has laid already. */
export const isOfHerOwn = (step: Step): step is Coat =>
  step.kind === 'coat' && HER_OWN.includes(step.product);

/** Such a coat, laid as she lays it: neither surely by hand nor surely by spray. */
export const isHerCoat = (step: Step): step is Coat => isOfHerOwn(step) && step.by === undefined;

/** Such a coat that is surely laid by hand, whatever she coats with. */
export const isHersByHand = (step: Step): step is Coat => isOfHerOwn(step) && step.by === 'hand';
