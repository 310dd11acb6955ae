import { type ClockStore, emptyStore, type LaidCoat, readStore, wettestFirst } from '#engine/clock.ts';
import { without } from '#engine/index.ts';
import { MINUTE_MS } from '#engine/plain/time.ts';
import { cardInHand, dropCardInHand } from '../case/card-in-hand.ts';
import { keepCase, readCase } from '../case/store.ts';
import { forget, keep, lookUp } from '../shared/storage.ts';
import { causeOf, refusalOf } from '../shared/storage-refusal.ts';
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
/** A change that is made, and the clock as it was read for it. */
export type ClockChanged = OnClock & { readonly before: ClockStore };

/** What the disk held when it was last read. */
let seen: Pick<OnClock, 'store' | 'aside'> | undefined;
/** Changes that the browser would not keep, in their order: put onto whatever lies there once it does. */
let held: readonly Wanted[] = [];

const CHANNEL = 'halfdry.clock';
/** Forced onto the disk before it counts as kept. */
const STRICT = { durability: 'strict' } as const;

/** A private window, a full disk, a database that is cut off, or a browser without any. */
const isRefused = (error: unknown): boolean => refusalOf(error) !== undefined || !globalThis.indexedDB;

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

/** Gives the same clock back where there is nothing to change; then nothing is written. */
type Change = (store: ClockStore) => ClockStore;

const numberOf = (value: unknown): number =>
  typeof value === 'number' && Number.isFinite(value) ? value : 0;

/** Has her told what was put back, when she comes to the page of the clock. */
const noteBack = (coats: number): void => {
  if (coats) keep('coats-back', { coats });
};

/** What is wanted of the clock beside its reading. */
type Wanted = { readonly by?: Change; readonly aside?: readonly unknown[] };

/**
 * One transaction: what lies there is read, changed and written back, so that no other tab comes between. Where the
 * browser has lost its database, its second copy stands for it. Once this resolves the copy has followed.
 */
const inOne = async (
  db: ClockDb,
  wanted: Wanted,
  copy?: Clock,
  looked = knownUncopied(),
): Promise<ClockChanged> => {
  const old = oldClock();
  const change = db.transaction('clock', 'readwrite', STRICT);
  // Its end is told by the write that ended it; unheard, it would be told twice.
  const ended = change.done.then(
    () => undefined,
    (error: unknown) => error,
  );
  const { store: place } = change;
  const work = async () => {
    const [now, aside, before] = await Promise.all([
      place.get('now'),
      place.get('aside'),
      place.get('written'),
    ]);
    const empty = now === undefined && aside === undefined;
    if (empty && !looked) return undefined;
    const lost = empty ? copy : undefined;
    const there = joined({ now: lost?.now ?? now, aside: lost?.aside ?? aside, old });
    const store = wanted.by ? wanted.by(there.store) : there.store;
    const left = wanted.aside ?? there.aside;
    const writes =
      store !== there.store ||
      lost !== undefined ||
      old !== undefined ||
      left.length !== listOf(aside).length;
    const last = Math.max(numberOf(before), lost?.written ?? 0);
    const written = writes ? Math.max(Date.now(), last + 1) : last;
    if (writes)
      await Promise.all([place.put(store, 'now'), place.put(left, 'aside'), place.put(written, 'written')]);
    await change.done;
    return { there, store, left, writes, written, lost };
  };
  const done = await work().catch(async (error: unknown) => {
    throw await causeOf(error, ended);
  });
  // No transaction waits for another store, so it begins again once the copy is read.
  if (!done) return inOne(db, wanted, await copiedClock(), true);
  const { there, store, left, writes, written, lost } = done;
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
  return { before: there.store, store, aside: left, onDisk: true };
};

const afterAll = (changes: readonly Wanted[], store: ClockStore): ClockStore =>
  changes.reduce((so, { by }) => by?.(so) ?? so, store);
/** What is aside after the last of these that says anything of it. */
const asideAfter = (changes: readonly Wanted[]) => changes.findLast(({ aside }) => aside)?.aside;

/** The clock in this page alone, as far as nothing better can be had: what was last read, with all that was not kept. */
const inMemory = (wanted: Wanted): ClockChanged => {
  const there = seen ?? joined({ now: undefined, aside: undefined, old: oldClock() });
  const before = afterAll(held, there.store);
  if (wanted.by || wanted.aside) held = [...held, wanted];
  const store = wanted.by?.(before) ?? before;
  return { before, store, aside: asideAfter(held) ?? there.aside, onDisk: false };
};

const withDb = async (wanted: Wanted): Promise<ClockChanged> => {
  // What this page alone holds would be gone from sight if the disk were read again.
  if (held.length && !wanted.by && !wanted.aside) return inMemory(wanted);
  const waited = held;
  try {
    let before: ClockStore | undefined;
    const by = (there: ClockStore) => {
      before = afterAll(waited, there);
      return wanted.by?.(before) ?? before;
    };
    const aside = asideAfter([...waited, wanted]);
    const after = await inOne(await clockDb(), { by, ...(aside && { aside }) });
    held = held.filter((one) => !waited.includes(one));
    seen = { store: after.store, aside: after.aside };
    if (waited.length) tellTabs();
    return { ...after, before: before ?? after.before };
  } catch (error) {
    if (!isRefused(error)) throw error;
    return inMemory(wanted);
  }
};

/** The coats on the clock. */
export const loadClock = (): Promise<OnClock> => withDb({});

/**
 * Changes the clock as it lies there at that moment. Once this resolves with `onDisk`, the change outlives the browser;
 * else tell her.
 */
export const changeClock = async (by: Change): Promise<ClockChanged> => {
  const after = await withDb({ by });
  if (after.store !== after.before) tellTabs();
  return after;
};

/** Lets go of what could not be read, when she has said so. */
export const dropAside = async (): Promise<OnClock> => {
  const after = await withDb({ aside: [] });
  tellTabs();
  return after;
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

/** The coat that answers: the one of the card in hand, else the one she chose, else the wettest. */
export const currentCoat = (store: ClockStore, now: number): LaidCoat | undefined => {
  const card = cardInHand()?.id;
  return (
    store.coats.find((coat) => card && coat.card === card) ??
    store.coats.find(({ id }) => id === store.current) ??
    wettestFirst(store, now)[0]
  );
};

/** From now on this coat answers. What she said of the other film, and the card of the other piece, are over. */
export const chooseCoat = ({ id, card }: LaidCoat): Promise<OnClock> => {
  keepCase(without(readCase(), 'stage'));
  if (cardInHand()?.id !== card) dropCardInHand();
  return changeClock((store) => ({ ...store, current: id }));
};

const SEEN_EVERY = MINUTE_MS;

/** Notes that the device's clock was read, once a minute so that tabs rest; a clock that is doubted is not noted. */
export const noteSeen = async (store: ClockStore, now: number): Promise<void> => {
  if (!store.coats.length || now - store.seenAt < SEEN_EVERY) return;
  await withDb({ by: (there) => ({ ...there, seenAt: Math.max(there.seenAt, now) }) });
};

/** A clock without a coat. */
export const noClock: OnClock = { store: emptyStore(), aside: [], onDisk: true };
