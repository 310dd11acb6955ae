import type { Defect } from './model/defect.ts';
import type { Claim } from './model/source.ts';

/** What is said of a flaw while the coat is wet, as the claim that it is. */
export const wetClaim = (flaw: Pick<Defect, 'while-wet' | 'while-wet-rests-on'>): Claim => ({
  says: flaw['while-wet'],
  ...flaw['while-wet-rests-on'],
});
