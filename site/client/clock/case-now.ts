import type { Case } from '#engine/index.ts';
import { readCase } from '../case/store.ts';
import { coatKept } from './key.ts';

/** Her case with what the clock knows of the running coat. What she said herself wins over the clock. */
export const caseNow = async (): Promise<Case> => {
  const own = readCase();
  if (!coatKept()) return own;
  const facts = await import('./facts.ts').catch(() => undefined);
  return facts ? { ...facts.clockFacts(), ...own } : own;
};
