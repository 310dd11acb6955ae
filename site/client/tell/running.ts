import { clockDoubt, clockNow, sayNow } from '#engine/clock.ts';
import type { Stage } from '#engine/model/stage.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import { clockWords } from '../../shared/clock-words.ts';
import { standingNow } from '../../shared/stages.ts';
import { currentCoat, loadClock } from '../clock/store.ts';
import { timeStyle } from '../shared/time-style.ts';

/** A coat that dries on the clock, as the page that listens offers it. */
export type RunningCoat = {
  readonly piece: string;
  /** Its job card, where it has one. */
  readonly card: string | undefined;
  readonly stage: Stage;
  /** How dry it is, and what hands do until when, in words. */
  readonly standing: string;
  readonly verdict: string;
};

/** The coat in hand while its clock runs; nothing of one that is cured, or whose time is to be doubted. */
export const runningCoat = async (): Promise<RunningCoat | undefined> => {
  const { store } = await loadClock();
  const now = Date.now();
  const coat = currentCoat(store, now);
  const product = coat && entryOf(store.products, coat.product);
  const style = timeStyle();
  if (!product || clockDoubt(store.seenAt, now)) return undefined;
  const reading = clockNow(product, coat, now, store.products);
  if (reading.kind !== 'running' || reading.stage === 'cured') return undefined;
  return {
    piece: coat.piece,
    card: coat.card,
    stage: reading.stage,
    standing: standingNow(reading),
    verdict: sayNow(clockWords, reading, now, style).verdict,
  };
};
