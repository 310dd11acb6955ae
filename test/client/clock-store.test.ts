/** The coats on the clock as a browser keeps them, in a database that works like a browser's. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { type LaidCoat, withLaid } from '#engine/clock.ts';
import { closeClockDb } from '../../site/client/clock/database.ts';
import { changeClock, dropAside, loadClock } from '../../site/client/clock/store.ts';
import { LOCAL_KEYS } from '../../site/shared/storage-keys.ts';
import { product } from '../engine/calc/products.ts';

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
])('keeps aside what it can not read: %s', async (_what, text) => {
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

it('takes no bug for a refusal of the browser', async () => {
  await expect(
    changeClock(() => {
      throw new TypeError('a slip of ours');
    }),
  ).rejects.toThrow('a slip of ours');
});
