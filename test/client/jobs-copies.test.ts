/** The second copies of the job cards: a browser that loses its database loses her nothing, and brings nothing back that is gone. */
import { expect, it, vi } from 'vitest';
import { jobsDb } from '../../site/client/jobs/store/db.ts';
import {
  addCard,
  changeCard,
  mendCard,
  type Removed,
  readAside,
  readOne,
  readPhotos,
  readRemoved,
  removeCard,
  restoreCards,
  setCardAside,
} from '../../site/client/jobs/store/index.ts';
import { compareCopies, soundCopy } from '../../site/client/jobs/store/whole.ts';
import { copiesLackRoom, Shelf } from '../../site/client/shared/second-copy.ts';
import { recall } from '../../site/client/shared/storage.ts';
import { copyName } from '../../site/shared/storage-keys.ts';
import { Store } from '../../site/worker/store.ts';
import {
  all,
  cardOf,
  eachInAFreshBrowser,
  kept,
  memory,
  photograph,
  quota,
  startAgain,
} from './browser-with-copies.ts';

eachInAFreshBrowser();

it('puts back cards, photos, clashes, what was set aside and what is known to be taken away', async () => {
  for (const id of ['one', 'two', 'three', 'four']) await addCard(cardOf(id, `Piece ${id}`));
  await photograph('one', 'p1', 7);
  await photograph('three', 'p1', 8);
  const seen = await kept('one');
  await changeCard(seen, (card) => ({ ...card, notes: 'first' }));
  await changeCard(seen, (card) => ({ ...card, notes: 'second' }));
  await removeCard('two');
  await (await jobsDb()).put('cards', { ...(await kept('three')), coats: 'gone' });
  await setCardAside('three');
  const before = await all();
  expect([before.cards.length, before.clashes.length, before.aside.length, before.removed.length]).toEqual([
    2, 1, 1, 1,
  ]);
  await startAgain(true);
  expect(await all()).toEqual(before);
  expect(recall('cards-back')).toEqual({ cards: 2, photosLost: 0 });
  // Once: the next visit finds nothing to put back.
  await startAgain();
  await compareCopies(await jobsDb());
  expect(recall('cards-back')).toEqual({ cards: 2, photosLost: 0 });
  expect(await all()).toEqual(before);
});

it('says which photos had no copy, and puts back all the rest', async () => {
  await addCard(cardOf('one'));
  await photograph('one', 'p1');
  await photograph('one', 'p2');
  memory.kept.get(copyName('photos'))?.clear();
  await photograph('one', 'p3');
  await startAgain(true);
  expect((await readPhotos('one')).map(({ id }) => id)).toEqual(['p3']);
  expect((await kept('one')).photos).toHaveLength(3);
  expect(recall('cards-back')).toEqual({ cards: 1, photosLost: 2 });
});

it('begins again where it was killed while it put back, and puts back what there is room for', async () => {
  await addCard(cardOf('one'));
  await photograph('one', 'p1');
  const before = await all();
  const usual = IDBObjectStore.prototype.put;
  const failing = (name: string) =>
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...given) {
      const request = usual.apply(this, given);
      if (this.name === name) this.transaction.abort();
      return request;
    });
  await startAgain(true);
  const cards = failing('summaries');
  expect((await readOne('one')).kind).toBe('gone');
  cards.mockRestore();
  await startAgain();
  expect(await all()).toEqual(before);
  await startAgain(true);
  const photos = failing('photos');
  expect((await kept('one')).photos).toHaveLength(1);
  expect(await readPhotos('one')).toEqual([]);
  photos.mockRestore();
  // Its copy stays for the time when there is room again.
  await compareCopies(await jobsDb());
  expect(memory.standing(copyName('photos'))).toHaveLength(1);
});

it('tells nothing and makes nothing where nothing was ever kept', async () => {
  expect((await all()).cards).toEqual([]);
  expect(recall('cards-back')).toBeUndefined();
  expect(await memory.keys()).toEqual([]);
});

it('never brings a removed card back, also where the browser was killed before its copies went', async () => {
  await addCard(cardOf('one'));
  await photograph('one', 'p1');
  memory.refuse = quota;
  await removeCard('one');
  memory.refuse = () => undefined;
  expect(memory.standing(copyName('cards')).length).toBeGreaterThan(0);
  await startAgain();
  await compareCopies(await jobsDb());
  expect(await readOne('one')).toEqual({ kind: 'gone' });
  expect(memory.standing(copyName('cards'))).toEqual([]);
  expect(memory.standing(copyName('photos'))).toEqual([]);
  await startAgain(true);
  expect(await readOne('one')).toEqual({ kind: 'gone' });
  expect((await readRemoved()).map(({ id }) => id)).toEqual(['one']);
});

it('never brings a removed card back whose removal alone was copied', async () => {
  await addCard(cardOf('one'));
  await addCard(cardOf('two'));
  memory.refuse = (does) => void (does === 'delete' && quota());
  await removeCard('one');
  await startAgain(true);
  expect(await readOne('one')).toEqual({ kind: 'gone' });
  expect((await readOne('two')).kind).toBe('card');
});

it('takes the copies of a card away with it, the older ones too', async () => {
  await addCard(cardOf('one'));
  for (const notes of ['a', 'b', 'c', 'd'])
    await changeCard(await kept('one'), (card) => ({ ...card, notes }));
  expect(memory.standing(copyName('cards'))).toHaveLength(2);
  await startAgain();
  await changeCard(await kept('one'), (card) => ({ ...card, notes: 'e' }));
  await removeCard('one');
  expect(memory.standing(copyName('cards'))).toEqual([]);
  expect([...(memory.kept.get(copyName('removed'))?.keys() ?? [])]).toHaveLength(1);
});

it('lets go of what earlier visits left behind the newest two', async () => {
  await addCard(cardOf('one'));
  const { changedAt } = await kept('one');
  // A page of its own each time, which knows nothing of what the others have put there.
  for (const at of [1, 2, 3]) await new Shelf('cards').put('one', at, '{}', 'application/json');
  expect(memory.standing(copyName('cards'))).toHaveLength(4);
  await startAgain();
  await compareCopies(await jobsDb());
  const left = [...((await new Shelf('cards').all()).get('one') ?? [])];
  expect(left).toEqual([changedAt, 3]);
});

it('goes back to the copy before where the newest is torn', async () => {
  await addCard(cardOf('one'));
  await changeCard(await kept('one'), (card) => ({ ...card, notes: 'first' }));
  const first = await kept('one');
  await changeCard(first, (card) => ({ ...card, notes: 'second' }));
  const newest = (await kept('one')).changedAt;
  memory.tear(copyName('cards'), (_id, at) => at === newest);
  await startAgain(true);
  expect(await kept('one')).toEqual(first);
});

it('sets a copy aside that is no card, as it is', async () => {
  const damaged = { ...cardOf('one'), coats: 'gone' };
  const removed: Removed = { id: 'one', name: 'Navy dresser', raw: damaged, photos: [], clashes: [] };
  await addCard(cardOf('two'));
  await restoreCards([removed]);
  expect((await readOne('one')).kind).toBe('unreadable');
  await startAgain(true);
  expect(await readAside()).toMatchObject([{ id: 'one', name: 'Navy dresser', raw: damaged }]);
  expect((await readOne('two')).kind).toBe('card');
  await startAgain();
  await compareCopies(await jobsDb());
  expect(await readAside()).toHaveLength(1);
});

it('saves all the same where there is no room for a copy, and no such place at all', async () => {
  memory.refuse = quota;
  await addCard(cardOf('one'));
  await photograph('one', 'p1');
  const changed = await changeCard(await kept('one'), (card) => ({ ...card, notes: 'x' }));
  expect(changed.kind).toBe('saved');
  expect(copiesLackRoom()).toBe(true);
  vi.stubGlobal('caches', undefined);
  await startAgain();
  expect((await changeCard(await kept('one'), (card) => ({ ...card, notes: 'y' }))).kind).toBe('saved');
  expect(await removeCard('one')).toBeDefined();
  await startAgain();
  expect(await readOne('one')).toEqual({ kind: 'gone' });
});

it('makes copies of what lay there before, and of what was left behind', async () => {
  vi.stubGlobal('caches', undefined);
  await addCard(cardOf('one'));
  await photograph('one', 'p1', 9);
  await addCard(cardOf('two'));
  await removeCard('two');
  await startAgain();
  vi.stubGlobal('caches', memory);
  await compareCopies(await jobsDb());
  memory.refuse = quota;
  await changeCard(await kept('one'), (card) => ({ ...card, notes: 'not copied' }));
  memory.refuse = () => undefined;
  await startAgain();
  await compareCopies(await jobsDb());
  const before = await all();
  await startAgain(true);
  expect(await all()).toEqual(before);
  expect((await kept('one')).notes).toBe('not copied');
});

it('puts back what a database has lost that is not empty', async () => {
  await addCard(cardOf('one'));
  await addCard(cardOf('two'));
  await photograph('two', 'p1', 9);
  const older = await kept('one');
  await changeCard(older, (card) => ({ ...card, notes: 'later' }));
  const before = await all();
  const db = await jobsDb();
  await db.put('cards', older);
  const line = (await db.getAll('summaries')).find(({ id }) => id === 'one');
  if (!line) throw new Error('no line');
  await db.put('summaries', { ...line, changedAt: older.changedAt, order: -older.changedAt });
  for (const store of ['cards', 'summaries'] as const) await db.delete(store, 'two');
  await db.clear('photos');
  await startAgain();
  await compareCopies(await jobsDb());
  expect(await all()).toEqual(before);
  expect(recall('cards-back')).toEqual({ cards: 2, photosLost: 0 });
});

it('leaves a damaged card to her, and has its sound copy for her', async () => {
  await addCard(cardOf('one'));
  await addCard(cardOf('two'));
  const sound = await kept('one');
  const db = await jobsDb();
  await db.put('cards', { ...(await kept('one')), coats: 'gone' });
  const copies = memory.standing(copyName('cards'));
  await startAgain();
  await compareCopies(await jobsDb());
  expect((await readOne('one')).kind).toBe('unreadable');
  expect(memory.standing(copyName('cards'))).toEqual(copies);
  const copy = await soundCopy('one');
  expect(copy).toEqual(sound);
  if (!copy) return;
  await mendCard(copy);
  expect(await kept('one')).toEqual(sound);
  expect(await readAside()).toMatchObject([{ id: 'one', raw: { coats: 'gone' } }]);
  expect(await soundCopy('none')).toBeUndefined();
});

it('makes room for a change where copies of photos take it', async () => {
  await addCard(cardOf('one'));
  await photograph('one', 'p1');
  const usual = IDBObjectStore.prototype.put;
  const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
    this: IDBObjectStore,
    ...given
  ) {
    if (this.name === 'photos' && memory.kept.has(copyName('photos'))) quota();
    return usual.apply(this, given);
  });
  expect((await photograph('one', 'p2')).kind).toBe('saved');
  put.mockRestore();
  expect((await readPhotos('one')).map(({ id }) => id).sort()).toEqual(['p1', 'p2']);
  // Those that went are made again where there is room.
  await compareCopies(await jobsDb());
  expect(
    memory
      .standing(copyName('photos'))
      .map(([id]) => id)
      .sort(),
  ).toEqual(['one/p1', 'one/p2']);
});

it('copies what two tabs write at once as it stands in the end', async () => {
  await addCard(cardOf('one'));
  const seen = await kept('one');
  await Promise.all(
    ['a', 'b', 'c', 'd', 'e', 'f'].map((notes, index) =>
      changeCard(seen, (card) => (index % 2 ? { ...card, notes } : { ...card, name: notes })),
    ),
  );
  const before = await all();
  await startAgain(true);
  expect(await all()).toEqual(before);
});

it('is not cleared by the service worker', async () => {
  await addCard(cardOf('one'));
  await memory.open('halfdry / old');
  await new Store('halfdry / ', '/', 'new', {}).alone('halfdry / ');
  expect(await memory.keys()).not.toContain('halfdry / old');
  await startAgain(true);
  expect((await readOne('one')).kind).toBe('card');
});
