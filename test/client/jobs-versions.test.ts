/** Every version of the store that was ever in a browser opens in this one with all its cards and photos. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, expect, it } from 'vitest';
import { newCard } from '#engine/jobs/card.ts';
import { CARD_VERSION } from '#engine/model/card-limits.ts';
import { closeJobsDb, JOBS_DB_VERSION, jobsDb, onJobsTrouble } from '../../site/client/jobs/store/db.ts';
import { JobsFault, type JobsTrouble } from '../../site/client/jobs/store/fault.ts';
import {
  addCard,
  changeCard,
  listCards,
  putCards,
  readOne,
  readPhotos,
  readRemoved,
  removeCard,
  restoreCards,
} from '../../site/client/jobs/store/index.ts';
import { CARD_1 } from '../engine/jobs/version-1.ts';
import { CARD_3 } from '../engine/jobs/version-3.ts';

/** How version 1 made its stores. Never change this: it stands for what lies in browsers. */
const VERSION_1 = (db: IDBDatabase) => {
  db.createObjectStore('cards', { keyPath: 'id' });
  db.createObjectStore('photos', { keyPath: 'id' }).createIndex('card', 'card');
};
/** What version 2 added to it. Never change this either. */
const VERSION_2 = (db: IDBDatabase) => {
  VERSION_1(db);
  db.createObjectStore('summaries', { keyPath: 'id' }).createIndex('order', 'order');
};
/** What version 3 added. Never change this either. */
const VERSION_3 = (db: IDBDatabase) => {
  VERSION_2(db);
  db.createObjectStore('removed', { keyPath: 'id' });
};
/** The store as it is. */
const LATEST = (db: IDBDatabase) => {
  VERSION_3(db);
  db.createObjectStore('clashes', { keyPath: 'id' }).createIndex('card', 'card');
  db.createObjectStore('aside', { keyPath: 'id' });
};
const PHOTO_1 = { id: 'p1', card: 'old-1', type: 'image/webp', bytes: new Uint8Array([7, 8]).buffer };

const open = (version: number, upgrade: (db: IDBDatabase) => void): Promise<IDBDatabase> =>
  new Promise((done, failed) => {
    const request = indexedDB.open('halfdry', version);
    request.onupgradeneeded = () => upgrade(request.result);
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });

const written = async (db: IDBDatabase, records: Readonly<Record<string, unknown>>): Promise<void> => {
  const change = db.transaction(Object.keys(records), 'readwrite');
  for (const [store, record] of Object.entries(records)) change.objectStore(store).put(record);
  await new Promise((done) => {
    change.oncomplete = done;
  });
  db.close();
};

beforeEach(async () => {
  await closeJobsDb();
  globalThis.indexedDB = new IDBFactory();
});

it('opens version 1', async () => {
  await written(await open(1, VERSION_1), { cards: CARD_1, photos: PHOTO_1 });
  expect((await jobsDb()).version).toBe(JOBS_DB_VERSION);
  expect(await readOne('old-1')).toEqual({ kind: 'card', card: { ...CARD_1, version: CARD_VERSION } });
  expect((await (await listCards()).all()).map(({ summary }) => [summary?.name, summary?.coats])).toEqual([
    ['Oak table', 1],
  ]);
  expect([...new Uint8Array((await readPhotos('old-1'))[0]?.bytes ?? new ArrayBuffer(0))]).toEqual([7, 8]);
  expect(await (await jobsDb()).count('summaries')).toBe(1);
});

it('opens version 2, and notes in it what is taken away', async () => {
  const summary = { id: 'old-1', changedAt: CARD_1.changedAt, order: -CARD_1.changedAt, summary: undefined };
  await written(await open(2, VERSION_2), { cards: CARD_1, photos: PHOTO_1, summaries: summary });
  expect(await readOne('old-1')).toEqual({ kind: 'card', card: { ...CARD_1, version: CARD_VERSION } });
  expect(await readRemoved()).toEqual([]);
  const removed = await removeCard('old-1');
  expect(await readRemoved()).toMatchObject([{ id: 'old-1', name: 'Oak table' }]);
  if (!removed) throw new Error('nothing was handed back');
  await restoreCards([removed]);
  expect(await readRemoved()).toEqual([]);
  expect((await readPhotos('old-1')).map(({ id }) => id)).toEqual(['p1']);
});

it('opens version 3 with its photos, which have a place of their own each card from then on', async () => {
  await written(await open(3, VERSION_3), { cards: CARD_1, photos: PHOTO_1 });
  const read = await readOne('old-1');
  if (read.kind !== 'card') throw new Error(read.kind);
  await putCards(
    [{ ...read.card, id: 'other' }],
    [{ ...PHOTO_1, card: 'other', bytes: new Uint8Array([9]).buffer }],
  );
  const bytesOf = async (card: string) =>
    (await readPhotos(card)).map(({ id, bytes }) => [id, ...new Uint8Array(bytes)]);
  expect(await bytesOf('old-1')).toEqual([['p1', 7, 8]]);
  expect(await bytesOf('other')).toEqual([['p1', 9]]);
  // A photo of the old form that is written again is there once.
  await putCards([], [{ ...PHOTO_1, bytes: new Uint8Array([8]).buffer }]);
  expect(await bytesOf('old-1')).toEqual([['p1', 8]]);
  await removeCard('old-1');
  expect(await bytesOf('old-1')).toEqual([]);
  expect(await bytesOf('other')).toEqual([['p1', 9]]);
});

it('reads a card that was stored at version 3 with what its note told, and keeps it so once it is changed', async () => {
  await written(await open(JOBS_DB_VERSION, LATEST), { cards: CARD_3 });
  const before = await readOne('old-3');
  if (before.kind !== 'card') throw new Error(before.kind);
  expect(before.card.repairs.map(({ laidNoCoat }) => laidNoCoat ?? false)).toEqual([
    ...[true, true, true],
    ...[false, false],
  ]);
  await changeCard(before.card, (card) => ({ ...card, notes: 'changed' }));
  const raw: unknown = await (await jobsDb()).get('cards', 'old-3');
  expect(raw).toMatchObject({ version: CARD_VERSION, repairs: before.card.repairs, notes: 'changed' });
});

it('opens version 1 with a damaged record beside a sound one', async () => {
  const db = await open(1, VERSION_1);
  const change = db.transaction('cards', 'readwrite');
  change.objectStore('cards').put(CARD_1);
  change.objectStore('cards').put({ id: 'broken', coats: 7 });
  await new Promise((done) => {
    change.oncomplete = done;
  });
  db.close();
  const list = await (await listCards()).all();
  expect(list.map(({ id, summary }) => [id, summary?.name])).toEqual([
    ['old-1', 'Oak table'],
    ['broken', undefined],
  ]);
});

it('leaves a newer version alone and says what to do', async () => {
  (await open(JOBS_DB_VERSION + 1, VERSION_1)).close();
  await expect(listCards()).rejects.toMatchObject({ trouble: 'newer-site' });
});

it('lets a newer page in, tells so, and does not write any more', async () => {
  const told: (JobsTrouble | undefined)[] = [];
  onJobsTrouble((trouble) => told.push(trouble), new AbortController().signal);
  await jobsDb();
  (await open(JOBS_DB_VERSION + 1, () => undefined)).close();
  expect(told).toEqual(['newer-site']);
  const given = { name: 'Chair', kind: 'furniture', base: 'stain', tone: 'wood', age: 'none' } as const;
  await expect(addCard(newCard(given, 'late', 1))).rejects.toBeInstanceOf(JobsFault);
});

it('waits for an older page that holds the store, and says so', async () => {
  const told: (JobsTrouble | undefined)[] = [];
  onJobsTrouble((trouble) => told.push(trouble), new AbortController().signal);
  const old = await open(1, VERSION_1);
  const list = listCards();
  await expect.poll(() => told).toEqual(['blocked']);
  old.close();
  expect((await list).count).toBe(0);
  // And that it is over.
  expect(told).toEqual(['blocked', undefined]);
});
