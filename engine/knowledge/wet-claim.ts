import type { Defect } from '../model/defect.ts';
import type { Claim } from '../model/source.ts';

/** What is said of a flaw while the coat is wet, and while it sets, as the claim that it is. */
export const wetClaim = (
  flaw: Pick<Defect, 'while-wet' | 'while-setting' | 'while-wet-rests-on'>,
): Claim => ({
  says: [flaw['while-wet'], flaw['while-setting']].filter(Boolean).join(' '),
  ...flaw['while-wet-rests-on'],
});
