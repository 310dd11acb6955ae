import { clockDoubt, clockNow, factsOf, laidBeforeClocks } from '#engine/clock.ts';
import { type Case, emptyCase } from '#engine/index.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import { currentCoat, loadClock } from './store.ts';

/** What the clock knows of the coat in hand; nothing once it is cured or where its time can not be right. */
export const clockFacts = async (now = Date.now()): Promise<Case> => {
  const { store } = await loadClock();
  const coat = currentCoat(store, now);
  const product = entryOf(store.products, coat?.product);
  if (!coat || !product || laidBeforeClocks(coat.laidAt) || clockDoubt(store.seenAt, now)) return emptyCase();
  const reading = clockNow(product, coat, now, store.products);
  const over = reading.kind === 'future' || (reading.kind === 'running' && reading.stage === 'cured');
  return over ? emptyCase() : factsOf(product, coat, now, store.products);
};
