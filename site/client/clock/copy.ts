import { readData, Shelf, tryCopy } from '../shared/second-copy.ts';

/** The second copy of the clock, by when the clock was written. */
const SHELF = new Shelf('clock');
const ID = 'now';

/** What the database holds, or held. */
export type Clock = { readonly now: unknown; readonly aside: unknown; readonly written: number };
const isClock = (data: unknown): data is Omit<Clock, 'written'> =>
  typeof data === 'object' && data !== null && 'now' in data && 'aside' in data;

const versions = async (): Promise<readonly number[]> => (await SHELF.all()).get(ID) ?? [];

/** Set once this page has looked and found none. */
let none = false;
/** Whether there is surely no copy, so that the first coat waits for no look at one. */
export const knownUncopied = (): boolean => none;

/** The newest copy that can be read. */
export const copiedClock = async (): Promise<Clock | undefined> => {
  const copy = await tryCopy(async () => {
    for (const written of await versions()) {
      const data = await readData(SHELF, ID, written);
      if (isClock(data)) return { now: data.now, aside: data.aside, written };
    }
    return undefined;
  });
  none = !copy;
  return copy;
};

/** What this page knows to be copied of an open database: one that was lost and begun anew may hold the same instant. */
const copied = new WeakMap<object, number>();

/** Lets the copy follow what is on the disk in `db`. A coat that was taken off stays on no older copy. */
export const copyClock = async (db: object, clock: Clock, fewer: boolean): Promise<void> => {
  const { now, aside, written } = clock;
  if (copied.get(db) === written) return;
  await tryCopy(async () => {
    const there = await versions();
    // A later one is another tab's, which has this change in it.
    const older = there.filter((one) => one < written);
    if (older.length === there.length)
      await SHELF.put(ID, written, JSON.stringify({ now, aside }), 'application/json', older, fewer ? 1 : 2);
    copied.set(db, written);
    none = false;
  });
};
