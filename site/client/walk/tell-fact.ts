import { type Case, without } from '#engine/index.ts';
import { TOLD, type ToldFact } from '../../shared/told.ts';
import { TOLD_EVENT } from '../case/facts-changed.ts';
import { keepCase, readCase } from '../case/store.ts';

/** Keeps what is told of the piece, or forgets it; false where this browser keeps no notes. The page follows all the same. */
export const tellFact = (fact: ToldFact, value: string): boolean => {
  const on: Case = value ? { ...readCase(), [fact]: { value, how: 'told' } } : without(readCase(), fact);
  const kept = keepCase(on);
  document.dispatchEvent(new Event(TOLD_EVENT));
  return kept;
};

/** What is told of it, where that is one of the answers offered. */
export const toldValue = (on: Case, fact: ToldFact): string => {
  const value = on[fact]?.value;
  return typeof value === 'string' && value in TOLD[fact].values ? value : '';
};
