import { flawOver } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { changeClock, loadClock } from './store.ts';

/** Has the clock know of the flaw that is open on a card, or that none is any more, where a coat of that card is on it. */
export const tellFlaw = async (card: JobCard): Promise<void> => {
  const flaw = flawOver(card);
  const { store } = await loadClock();
  if (!store.coats.some((coat) => coat.card === card.id && coat.flaw !== flaw)) return;
  await changeClock((there) => ({
    ...there,
    coats: there.coats.map((coat) => (coat.card === card.id ? { ...coat, flaw } : coat)),
  }));
};
