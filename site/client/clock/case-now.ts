import type { Case } from '#engine/index.ts';
import { readCase } from '../case/store.ts';
import { coatMayRun } from './key.ts';

/** Her case with what the clock knows of the running coat. What she said herself wins over the clock. */
export const caseNow = async (): Promise<Case> => {
  const own = readCase();
  if (!(await coatMayRun())) return own;
  const { clockFacts } = await import('./facts.ts');
  return { ...(await clockFacts()), ...own };
};
