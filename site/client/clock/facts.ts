import { clockNow, factsOf, jumpedBack } from '#engine/clock.ts';
import type { Case } from '#engine/index.ts';
import { currentCoat, loadClock } from './store.ts';

/** What the clock knows of the coat in hand; nothing once it is cured or where its time can not be right. */
export const clockFacts = (now = Date.now()): Case => {
  const { store } = loadClock();
  const coat = currentCoat(store);
  const product = coat && store.products[coat.product];
  if (!product || jumpedBack(store.seenAt, now)) return {};
  const reading = clockNow(product, coat, now);
  const over = reading.kind === 'future' || (reading.kind === 'running' && reading.stage === 'cured');
  return over ? {} : factsOf(product, coat, now);
};
