import type { LaidCoat } from '#engine/clock.ts';
import { flawOver } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { changeClock } from './store.ts';

/** Has the clock know of the flaw that is open on a card, or that none is any more, where a coat of that card is on it. */
export const tellFlaw = async (card: JobCard): Promise<void> => {
  const flaw = flawOver(card);
  const isOther = (coat: LaidCoat) => coat.card === card.id && coat.flaw !== flaw;
  await changeClock((there) =>
    there.coats.some(isOther)
      ? { ...there, coats: there.coats.map((coat) => (isOther(coat) ? { ...coat, flaw } : coat)) }
      : there,
  );
};
