/** A browser with its stores and second copies, which a test makes afresh, fills and loses. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, vi } from 'vitest';
import { newCard } from '#engine/jobs/card.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { closeJobsDb, jobsDb } from '../../site/client/jobs/store/db.ts';
import { addPhoto, readAside, readOne, readRemoved } from '../../site/client/jobs/store/index.ts';
import { MemoryCaches } from './memory-caches.ts';

export const NOW = Date.UTC(2026, 10, 23, 17);
export const cardOf = (id: string, name = 'Navy dresser'): JobCard =>
  newCard({ name, kind: 'furniture', base: 'chalk-paint', tone: 'dark', age: 'none' }, id, NOW);
export const photoOf = (id: string, card: string, byte = 1) => ({
  id,
  card,
  type: 'image/webp',
  bytes: new Uint8Array([byte, 2, 3]).buffer,
});
export const entryOf = (id: string) => ({ id, takenAt: NOW, width: 4, height: 3 });

/** The caches of the browser, made afresh with it. */
export let memory: MemoryCaches;
const text = new Map<string, string>();

/** A browser that holds nothing at all. */
export const freshBrowser = (): void => {
  memory = new MemoryCaches();
  vi.stubGlobal('indexedDB', new IDBFactory());
  vi.stubGlobal('caches', memory);
};

/** Called by each file of tests: files of one worker share this module, whose own hooks would be those of the first file alone. */
export const eachInAFreshBrowser = (): void => {
  beforeEach(async () => {
    await closeJobsDb();
    text.clear();
    freshBrowser();
    vi.stubGlobal('reportError', (error: unknown) => {
      throw error;
    });
    vi.stubGlobal('localStorage', {
      getItem: (key: string) => text.get(key) ?? null,
      setItem: (key: string, value: string) => void text.set(key, value),
      removeItem: (key: string) => void text.delete(key),
    });
  });
  afterEach(async () => {
    await closeJobsDb();
    vi.unstubAllGlobals();
  });
};

export const kept = async (id: string): Promise<JobCard> => {
  const read = await readOne(id);
  if (read.kind !== 'card') throw new Error(read.kind);
  return read.card;
};
/** The browser starts again, with its databases or without. */
export const startAgain = async (without = false): Promise<void> => {
  await closeJobsDb();
  if (without) vi.stubGlobal('indexedDB', new IDBFactory());
};
export const photograph = (card: string, id: string, byte = 1) =>
  addPhoto(photoOf(id, card, byte), (one) => ({ ...one, photos: [...one.photos, entryOf(id)] }));

const bytesOf = (photos: readonly { readonly id: string; readonly bytes: ArrayBuffer }[]) =>
  photos.map(({ id, bytes }) => [id, ...new Uint8Array(bytes)].join(' ')).sort();
/** All that the store holds, in a form that can be compared. */
export const all = async () => {
  const db = await jobsDb();
  const [cards, clashes, photos, aside, removed] = await Promise.all([
    db.getAll('cards'),
    db.getAll('clashes'),
    db.getAll('photos'),
    readAside(),
    readRemoved(),
  ]);
  return {
    cards,
    clashes,
    photos: bytesOf(photos),
    aside: aside.map(({ photos: own, ...one }) => ({ ...one, photos: bytesOf(own) })),
    removed,
    listed: (await db.getAll('summaries')).length,
  };
};
export const quota = (): never => {
  throw new DOMException('no room', 'QuotaExceededError');
};
