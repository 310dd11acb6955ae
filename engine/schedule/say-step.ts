import type { ClockWords } from '../model/clock-words.ts';
import { inARow } from '../plain/filled.ts';
import type { PlanStep } from './steps.ts';

type Told = Pick<PlanStep, 'say' | 'thin' | 'must' | 'ifOnePart' | 'unsanded'>;

/** What is said at a step, by what is known of the film below; empty where its title says it all. */
export const sayStep = (
  words: Pick<ClockWords, 'thin' | 'two-part'>,
  { say, thin, must, ifOnePart, unsanded }: Told,
): string => {
  if (unsanded) return words['two-part'][unsanded];
  return inARow(ifOnePart && words['two-part'].perhaps, thin ? words.thin[must ? 'late' : 'ready'] : say);
};
