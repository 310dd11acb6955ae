import type { ClockWords } from '../model/clock-words.ts';
import type { Running } from './reading.ts';

/** What is said where a film is never to be sanded as it is, in the place of every word on sanding. */
export type Unsanded = ClockWords['lead'];

/** Why nothing says that a film is sanded: old paint below that may hold lead, then isocyanate in it. */
export const unsandedFor = (
  words: Pick<ClockWords, 'lead' | 'two-part'>,
  { sanded, lead, twoPart }: Pick<Running, 'sanded' | 'lead' | 'twoPart'>,
): Unsanded | undefined => {
  if (!sanded) return undefined;
  if (lead) return words.lead;
  return twoPart === 'surely' ? words['two-part'] : undefined;
};
