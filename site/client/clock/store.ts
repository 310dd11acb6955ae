import { type ClockStore, jumpedBack, type LaidCoat, readStore } from '#engine/clock.ts';
import { CLOCK_KEY } from './key.ts';

/** What the browser would not keep: the clock still runs in this page. */
let memory: ClockStore | undefined;

/** The coats on the clock, and how many could not be read. */
export const loadClock = (): ReturnType<typeof readStore> => {
  if (memory) return { store: memory, lost: 0 };
  try {
    return readStore(JSON.parse(localStorage.getItem(CLOCK_KEY) ?? 'null'));
  } catch {
    return readStore(null);
  }
};

/** Keeps the coats. False where the browser refuses (storage full or denied): tell her. */
export const keepClock = (store: ClockStore): boolean => {
  try {
    if (store.coats.length) localStorage.setItem(CLOCK_KEY, JSON.stringify(store));
    else localStorage.removeItem(CLOCK_KEY);
    memory = undefined;
    return true;
  } catch {
    memory = store;
    return false;
  }
};

/** The coat of the piece that she is looking at: the one she chose, else the one laid last. */
export const currentCoat = ({ coats, current }: ClockStore): LaidCoat | undefined =>
  coats.find(({ id }) => id === current) ?? [...coats].sort((one, two) => two.laidAt - one.laidAt)[0];

const SEEN_EVERY = 60_000;

/** Minutes that the device's clock has gone back; else notes that it was read, once a minute so that tabs rest. */
export const watchClock = (store: ClockStore, now: number): number => {
  const back = jumpedBack(store.seenAt, now);
  if (!back && store.coats.length && now - store.seenAt >= SEEN_EVERY) keepClock({ ...store, seenAt: now });
  return back;
};
