import { type ClockStore, emptyStore, type LaidCoat, readStore } from '#engine/clock.ts';
import { MINUTE_MS } from '#engine/plain/time.ts';
import { forget, keep, lookUp } from '../shared/storage.ts';
import { type Clock, copiedClock, copyClock, knownUncopied } from './copy.ts';
import { type ClockDb, clockDb } from './database.ts';

/** What is on the clock, and how that stands. */
export type OnClock = {
  readonly store: ClockStore;
  /** Coats, or whole clocks, that could not be read and are kept aside. */
  readonly aside: readonly unknown[];
  /** Whether it lies on the disk. Where the browser keeps nothing the clock runs in this page alone. */
  readonly onDisk: boolean;
};

/** What the browser would not keep. */
let memory: ClockStore | undefined;

const CHANNEL = 'halfdry.clock';
/** Forced onto the disk before it counts as kept. */
const STRICT = { durability: 'strict' } as const;

/** What a browser refuses: a private window, a full disk, a database that is cut off. Anything else is a bug. */
const isRefusal = (error: unknown): boolean =>
  error instanceof DOMException || (error instanceof ReferenceError && !('indexedDB' in globalThis));

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** What was kept before the clock had a database. Text that is no JSON is handed on as it is. */
const oldClock = (): unknown => {
  const found = lookUp('old-clock');
  if (found.kind === 'kept') return found.value;
  return found.kind === 'damaged' ? found.text : undefined;
};

type Raw = { readonly now: unknown; readonly aside: unknown; readonly old: unknown };

/** Both clocks as one: what stands in the database wins, what can not be read is set aside. */
const joined = ({
  now,
  aside,
  old,
}: Raw): { readonly store: ClockStore; readonly aside: readonly unknown[] } => {
  const [here, before] = [readStore(now ?? null), readStore(old ?? null)];
  const known = new Set(here.store.coats.map(({ id }) => id));
  const store: ClockStore = {
    ...here.store,
    coats: [...here.store.coats, ...before.store.coats.filter(({ id }) => !known.has(id))],
    products: { ...before.store.products, ...here.store.products },
    current: here.store.current ?? before.store.current,
    seenAt: Math.max(here.store.seenAt, before.store.seenAt),
  };
  const lost = [here.lost ? now : undefined, before.lost ? old : undefined].filter(
    (one) => one !== undefined,
  );
  return { store, aside: [...listOf(aside), ...lost] };
};

type Change = (store: ClockStore) => ClockStore;

const numberOf = (value: unknown): number =>
  typeof value === 'number' && Number.isFinite(value) ? value : 0;

/** Has her told what was put back, when she comes to the page of the clock. */
const noteBack = (coats: number): void => {
  if (coats) keep('coats-back', { coats });
};

/**
 * One transaction: what lies there is read, changed and written back, so that no other tab comes between. Where the
 * browser has lost its database, its second copy stands for it. Once this resolves the copy has followed.
 */
const inOne = async (
  db: ClockDb,
  by: Change | undefined,
  asideNow?: readonly unknown[],
  copy?: Clock,
  looked = knownUncopied(),
): Promise<OnClock> => {
  const old = oldClock();
  const change = db.transaction('clock', 'readwrite', STRICT);
  // Its end is told by the write that ended it; unheard, it would be told twice.
  change.done.catch(() => undefined);
  const { store: place } = change;
  const [now, aside, before] = await Promise.all([
    place.get('now'),
    place.get('aside'),
    place.get('written'),
  ]);
  const empty = now === undefined && aside === undefined;
  // No transaction waits for another store, so it begins again once the copy is read.
  if (empty && !looked) return inOne(db, by, asideNow, await copiedClock(), true);
  const lost = empty ? copy : undefined;
  const there = joined({ now: lost?.now ?? now, aside: lost?.aside ?? aside, old });
  const store = by ? by(there.store) : there.store;
  const left = asideNow ?? there.aside;
  const writes = by || lost || old !== undefined || there.aside.length !== listOf(aside).length;
  const last = Math.max(numberOf(before), lost?.written ?? 0);
  const written = writes ? Math.max(Date.now(), last + 1) : last;
  if (writes)
    await Promise.all([place.put(store, 'now'), place.put(left, 'aside'), place.put(written, 'written')]);
  await change.done;
  if (old !== undefined) forget('old-clock');
  if (store.coats.length) keep('coat-runs', 1);
  else forget('coat-runs');
  if (lost) noteBack(there.store.coats.length);
  const copies = copyClock(
    db,
    { now: store, aside: left, written },
    store.coats.length < there.store.coats.length || left.length < there.aside.length,
  );
  // What is only read is not held up.
  if (writes) await copies;
  return { store, aside: left, onDisk: true };
};

/** The clock in this page alone, as far as nothing better can be had. */
const inMemory = (by: Change | undefined): OnClock => {
  const there = memory ?? joined({ now: undefined, aside: undefined, old: oldClock() }).store;
  memory = by ? by(there) : there;
  return { store: memory, aside: [], onDisk: false };
};

const withDb = async (by: Change | undefined): Promise<OnClock> => {
  // What this page alone holds would be gone from sight if the disk were read again.
  if (memory && !by) return inMemory(by);
  try {
    const held = memory;
    const after = await inOne(
      await clockDb(),
      held ? (there) => (by ?? ((same) => same))({ ...there, ...held, coats: held.coats }) : by,
    );
    memory = undefined;
    return after;
  } catch (error) {
    if (!isRefusal(error)) throw error;
    return inMemory(by);
  }
};

/** The coats on the clock. */
export const loadClock = (): Promise<OnClock> => withDb(undefined);

/** Changes the clock. Once this resolves with `onDisk`, the change outlives the browser; else tell her. */
export const changeClock = async (by: Change): Promise<OnClock> => {
  const after = await withDb(by);
  tellTabs();
  return after;
};

/** Lets go of what could not be read, when she has said so. */
export const dropAside = async (): Promise<void> => {
  await inOne(await clockDb(), (store) => store, []);
  tellTabs();
};

let channel: BroadcastChannel | undefined;
const tellTabs = (): void => {
  channel ??= typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(CHANNEL);
  channel?.postMessage(null);
};
/** Calls when another tab, or another part of this page, has changed the clock. */
export const onClockChange = (listener: () => void, signal: AbortSignal): void => {
  if (typeof BroadcastChannel === 'undefined' || signal.aborted) return;
  const heard = new BroadcastChannel(CHANNEL);
  heard.addEventListener('message', listener, { signal });
  signal.addEventListener('abort', () => heard.close());
};

/** The coat of the piece that she is looking at: the one she chose, else the one laid last. */
export const currentCoat = ({ coats, current }: ClockStore): LaidCoat | undefined =>
  coats.find(({ id }) => id === current) ?? coats.toSorted((one, two) => two.laidAt - one.laidAt)[0];

const SEEN_EVERY = MINUTE_MS;

/** Notes that the device's clock was read, once a minute so that tabs rest; a clock that is doubted is not noted. */
export const noteSeen = async (store: ClockStore, now: number): Promise<void> => {
  if (!store.coats.length || now - store.seenAt < SEEN_EVERY) return;
  await withDb((there) => ({ ...there, seenAt: Math.max(there.seenAt, now) }));
};

/** A clock without a coat. */
export const noClock: OnClock = { store: emptyStore(), aside: [], onDisk: true };
