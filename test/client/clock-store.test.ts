/** The coats on the clock as a browser keeps them, in a database that works like a browser's. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { type ClockStore, type LaidCoat, takeOffClock, withLaid } from '#engine/clock.ts';
import { clockDb, closeClockDb } from '../../site/client/clock/database.ts';
import { coatMayRun } from '../../site/client/clock/key.ts';
import { changeClock, dropAside, loadClock } from '../../site/client/clock/store.ts';
import { recall } from '../../site/client/shared/storage.ts';
import { copyName, LOCAL_KEYS } from '../../site/shared/storage-keys.ts';
import { product } from '../engine/calc/products.ts';
import { MemoryCaches } from './memory-caches.ts';

const LAID = Date.UTC(2026, 10, 24, 17);
const POLY = 'water-based-polyurethane';
const coat = (id: string, piece = id): LaidCoat => ({
  id,
  piece,
  product: POLY,
  laidAt: LAID,
  celsius: 23,
  relativeHumidity: 0.5,
  coatNumber: 1,
});
const kept = new Map<string, string>();

beforeEach(async () => {
  await closeClockDb();
  kept.clear();
  vi.stubGlobal('indexedDB', new IDBFactory());
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key),
  });
});
afterEach(() => vi.unstubAllGlobals());

const lay = (one: LaidCoat) =>
  changeClock((store) => ({
    ...store,
    coats: withLaid(store.coats, one),
    products: { ...store.products, [POLY]: product(POLY) },
    seenAt: LAID,
  }));
const names = async () => (await loadClock()).store.coats.map(({ piece }) => piece).sort();
/** As a browser that was killed and started again. */
const startAgain = () => closeClockDb();

it('keeps a coat that it says is kept', async () => {
  expect((await lay(coat('Chair'))).onDisk).toBe(true);
  await startAgain();
  expect(await names()).toEqual(['Chair']);
  expect(kept.get(LOCAL_KEYS['coat-runs'])).toBe('1');
});

it('loses none of the coats that are laid in the same instant', async () => {
  await Promise.all(Array.from({ length: 40 }, (_, index) => lay(coat(`piece ${index}`))));
  await startAgain();
  expect(await names()).toHaveLength(40);
});

it('takes over what was kept before it had a database, once', async () => {
  const old = { version: 1, coats: [coat('Chair')], products: {}, current: 'Chair', seenAt: LAID };
  kept.set(LOCAL_KEYS['old-clock'], JSON.stringify(old));
  await lay(coat('Dresser'));
  expect(await names()).toEqual(['Chair', 'Dresser']);
  expect(kept.has(LOCAL_KEYS['old-clock'])).toBe(false);
  await startAgain();
  expect(await names()).toEqual(['Chair', 'Dresser']);
});

it.each([
  ['cut text', '{"version":1,"coa'],
  ['no clock at all', '[1,2]'],
  [
    'a coat with a time that no can promises',
    JSON.stringify({
      version: 1,
      coats: [{ ...coat('Chair'), label: { minutes: { cure: { from: 1, to: 1e13 } } } }],
      products: {},
    }),
  ],
  [
    'a coat laid before 1970',
    JSON.stringify({ version: 1, coats: [{ ...coat('Chair'), laidAt: -1 }], products: {} }),
  ],
])('keeps aside what it cannot read: %s', async (_what, text) => {
  kept.set(LOCAL_KEYS['old-clock'], text);
  const { store, aside } = await loadClock();
  expect(store.coats).toEqual([]);
  expect(aside).toHaveLength(1);
  await startAgain();
  expect((await loadClock()).aside).toEqual(aside);
  await dropAside();
  expect((await loadClock()).aside).toEqual([]);
});

it('runs in the page alone where the browser keeps nothing, and goes to the disk when it may', async () => {
  const factory = indexedDB;
  vi.stubGlobal('indexedDB', {
    open: () => {
      throw new DOMException('denied', 'SecurityError');
    },
  });
  expect((await lay(coat('Chair'))).onDisk).toBe(false);
  expect(await names()).toEqual(['Chair']);
  vi.stubGlobal('indexedDB', factory);
  expect((await lay(coat('Dresser'))).onDisk).toBe(true);
  await startAgain();
  expect(await names()).toEqual(['Chair', 'Dresser']);
});

/** A browser that refuses every write of the clock by an error of this name, until it is let. */
const refusing = (name: string): (() => void) => {
  const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('', name);
  });
  return () => put.mockRestore();
};

it('loses no coat of the disk, nor one of another tab, over those that it had no room for', async () => {
  await lay(coat('Chair'));
  const letIt = refusing('QuotaExceededError');
  expect((await lay(coat('Dresser'))).onDisk).toBe(false);
  // What lay there stays in sight beside it.
  expect(await names()).toEqual(['Chair', 'Dresser']);
  letIt();
  const db = await clockDb();
  const there = (await db.get('clock', 'now')) as ClockStore;
  await db.put('clock', { ...there, coats: withLaid(there.coats, coat('Other tab')) }, 'now');
  expect((await lay(coat('Table'))).onDisk).toBe(true);
  await startAgain();
  expect(await names()).toEqual(['Chair', 'Dresser', 'Other tab', 'Table']);
});

it('says where what could not be read can not be let go, and does so once the browser lets it', async () => {
  kept.set(LOCAL_KEYS['old-clock'], '{"version":1,"coa');
  expect((await loadClock()).aside).toHaveLength(1);
  const letIt = refusing('QuotaExceededError');
  expect(await dropAside()).toMatchObject({ onDisk: false, aside: [] });
  // However often it is read.
  expect(await loadClock()).toMatchObject({ onDisk: false, aside: [] });
  letIt();
  expect(await lay(coat('Chair'))).toMatchObject({ onDisk: true, aside: [] });
  expect(await (await clockDb()).get('clock', 'aside')).toEqual([]);
});

it.each(['DataCloneError', 'DataError', 'ConstraintError', 'ReadOnlyError'])(
  'throws a %s, which is a bug of ours, and keeps what lay there',
  async (name) => {
    await lay(coat('Chair'));
    const letIt = refusing(name);
    await expect(lay(coat('Dresser'))).rejects.toMatchObject({ name });
    letIt();
    expect(await names()).toEqual(['Chair']);
  },
);

it('tells what the clock was before a change, and writes nothing where there is none', async () => {
  await lay(coat('Chair'));
  const put = vi.spyOn(IDBObjectStore.prototype, 'put');
  const { before, store } = await changeClock((there) => takeOffClock(there, 'nobody'));
  expect(store).toBe(before);
  expect(put).not.toHaveBeenCalled();
  put.mockRestore();
  const after = await changeClock((there) => takeOffClock(there, 'Chair'));
  expect([after.before, after.store].map(({ coats }) => coats.length)).toEqual([1, 0]);
});

it('takes no bug for a refusal of the browser', async () => {
  await expect(
    changeClock(() => {
      throw new TypeError('a slip of ours');
    }),
  ).rejects.toThrow('a slip of ours');
});

/** The browser starts again without its databases, as one does that finds them torn. */
const loseDatabase = async () => {
  await closeClockDb();
  vi.stubGlobal('indexedDB', new IDBFactory());
};
const withCopies = (): MemoryCaches => {
  const memory = new MemoryCaches();
  vi.stubGlobal('caches', memory);
  return memory;
};

it('puts the coats back from the second copy where the browser has lost its database, and has it told', async () => {
  withCopies();
  kept.set(LOCAL_KEYS['old-clock'], '{"version":1,"coa');
  await lay(coat('Chair'));
  await lay(coat('Dresser'));
  const before = await loadClock();
  expect(before.aside).toHaveLength(1);
  await loseDatabase();
  kept.clear();
  expect(await coatMayRun()).toBe(true);
  expect(await loadClock()).toEqual(before);
  expect(recall('coats-back')).toEqual({ coats: 2 });
  await lay(coat('Table'));
  await loseDatabase();
  expect(await names()).toEqual(['Chair', 'Dresser', 'Table']);
});

it('brings back no coat that was taken off, and nothing that was let go', async () => {
  const memory = withCopies();
  kept.set(LOCAL_KEYS['old-clock'], '{"version":1,"coa');
  await lay(coat('Chair'));
  await dropAside();
  await changeClock((store) => ({ ...store, coats: [] }));
  expect(memory.standing(copyName('clock'))).toHaveLength(1);
  memory.tear(copyName('clock'), () => true);
  await loseDatabase();
  expect(await loadClock()).toMatchObject({ store: { coats: [] }, aside: [] });
});

it('goes back to the copy before where the newest is torn', async () => {
  const memory = withCopies();
  await lay(coat('Chair'));
  await lay(coat('Dresser'));
  const newest = Math.max(...memory.standing(copyName('clock')).map(([, at]) => at));
  memory.tear(copyName('clock'), (_id, at) => at === newest);
  await loseDatabase();
  expect(await names()).toEqual(['Chair']);
});

it('keeps the newest of what several tabs write at once as its copy, and no more than two', async () => {
  const memory = withCopies();
  await Promise.all(Array.from({ length: 12 }, (_, index) => lay(coat(`piece ${index}`))));
  await lay(coat('last'));
  expect(memory.standing(copyName('clock'))).toHaveLength(2);
  await loseDatabase();
  expect(await names()).toHaveLength(13);
});

it('copies what lay there before there were copies, once it is read', async () => {
  vi.stubGlobal('caches', undefined);
  await lay(coat('Chair'));
  await startAgain();
  const memory = withCopies();
  await loadClock();
  await expect.poll(() => memory.standing(copyName('clock'))).toHaveLength(1);
  await loseDatabase();
  expect(await names()).toEqual(['Chair']);
});

it('keeps a coat where there is no room for a copy of it', async () => {
  const memory = withCopies();
  memory.refuse = () => {
    throw new DOMException('no room', 'QuotaExceededError');
  };
  expect((await lay(coat('Chair'))).onDisk).toBe(true);
  await startAgain();
  expect(await names()).toEqual(['Chair']);
});
