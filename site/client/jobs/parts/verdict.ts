import { sayNow } from '#engine/clock.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import type { JobsData } from '../../../shared/jobs-data.ts';
import { sayDate } from '../../shared/say-date.ts';
import { timeStyle } from '../../shared/time-style.ts';
import { lastCoatNow } from './clock.ts';

export type CardVerdict = { readonly verdict: string; readonly doing: string; readonly why: string };

/** What is to do with the piece now, by its last coat. */
export const cardVerdict = (card: JobCard, data: JobsData, now: number): CardVerdict => {
  if (card.handedOverAt !== undefined)
    return {
      verdict: 'Handed over',
      doing: 'repair',
      why: `On ${sayDate(card.handedOverAt)}. The care card still tells the dates.`,
    };
  const last = lastCoatNow(card, data.products, now);
  if (last) {
    const { verdict, doing, why } = sayNow(last.reading, now, timeStyle());
    return { verdict, doing, why: `Coat ${last.coat.coatNumber}. ${why}` };
  }
  return card.coats.length
    ? {
        verdict: 'No time can be told',
        doing: 'leave',
        why: 'The product of the last coat is not known here. Go by its can.',
      }
    : {
        verdict: 'No coat yet',
        doing: 'repair',
        why: 'When the first one is down, lay it here and its clock starts.',
      };
};
