/** The store of the job cards: what is told as saved is there, whole, and nothing is overwritten unseen. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, expect, it } from 'vitest';
import { newCard, withoutPhoto } from '#engine/jobs/card.ts';
import { previewShelves } from '#engine/jobs/preview.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { importCards } from '../../site/client/jobs/files/import-cards.ts';
import { closeJobsDb, jobsDb } from '../../site/client/jobs/store/db.ts';
import {
  addCard,
  addPhoto,
  changeCard,
  listCards,
  putCards,
  readOne,
  readPhotos,
  readRaw,
  readRemoved,
  removeCard,
  restoreCards,
} from '../../site/client/jobs/store/index.ts';
import { noteFlaw, noteRepair, setSettled, settleRepaired } from '../../site/client/jobs/store/notes.ts';

const NOW = Date.UTC(2026, 10, 23, 17);
const cardOf = (id: string, name = 'Navy dresser'): JobCard =>
  newCard({ name, kind: 'furniture', base: 'chalk-paint', tone: 'dark', age: 'none' }, id, NOW);
const photoOf = (id: string, card: string) => ({
  id,
  card,
  type: 'image/webp',
  bytes: new Uint8Array([1, 2, 3]).buffer,
});
const entry = { id: 'p1', takenAt: NOW, width: 4, height: 3 };

beforeEach(async () => {
  await closeJobsDb();
  globalThis.indexedDB = new IDBFactory();
});

const kept = async (id: string): Promise<JobCard> => {
  const read = await readOne(id);
  if (read.kind !== 'card') throw new Error(read.kind);
  return read.card;
};

it('keeps a card and lists it, the last changed first', async () => {
  await addCard(cardOf('one', 'Chair'));
  await addCard(cardOf('two'));
  const chair = await kept('one');
  const changed = await changeCard(chair, (card) => ({ ...card, notes: 'wobbles' }));
  expect(changed).toMatchObject({ kind: 'saved', merged: false, clashes: [] });
  expect((await kept('one')).notes).toBe('wobbles');
  expect((await (await listCards()).all()).map(({ id, summary }) => [id, summary?.name])).toEqual([
    ['one', 'Chair'],
    ['two', 'Navy dresser'],
  ]);
});

it('refuses a second card of the same id and leaves the first', async () => {
  await addCard(cardOf('one', 'Chair'));
  await expect(addCard(cardOf('one', 'Other'))).rejects.toMatchObject({ name: 'ConstraintError' });
  expect((await kept('one')).name).toBe('Chair');
});

it('puts the changes of two tabs together', async () => {
  await addCard(cardOf('one'));
  const seen = await kept('one');
  await changeCard(seen, (card) => ({ ...card, notes: 'from the first tab' }));
  const second = await changeCard(seen, (card) => ({ ...card, name: 'Blue dresser' }));
  expect(second).toMatchObject({ kind: 'saved', merged: true, clashes: [] });
  expect(await kept('one')).toMatchObject({ name: 'Blue dresser', notes: 'from the first tab' });
});

it('hands back what both tabs changed, and overwrites nothing', async () => {
  await addCard(cardOf('one'));
  const seen = await kept('one');
  await changeCard(seen, (card) => ({ ...card, notes: 'first' }));
  const second = await changeCard(seen, (card) => ({ ...card, notes: 'second', tone: 'light' }));
  expect(second).toMatchObject({
    kind: 'saved',
    merged: true,
    clashes: [{ field: 'notes', mine: 'second', theirs: 'first' }],
  });
  expect(await kept('one')).toMatchObject({ notes: 'first', tone: 'light' });
});

it('has a later time on every change, also where the clock of the device went back', async () => {
  await addCard({ ...cardOf('one'), changedAt: Date.now() + 1e9 });
  const before = await kept('one');
  await changeCard(before, (card) => ({ ...card, notes: 'x' }));
  expect((await kept('one')).changedAt).toBeGreaterThan(before.changedAt);
});

it('takes a card away with its photos, and puts both back', async () => {
  await addCard(cardOf('one'));
  await addPhoto(photoOf('p1', 'one'), (card) => ({ ...card, photos: [entry] }));
  expect((await readPhotos('one')).map(({ id }) => id)).toEqual(['p1']);
  const removed = await removeCard('one');
  expect(await readOne('one')).toEqual({ kind: 'gone' });
  expect(await readPhotos('one')).toEqual([]);
  expect((await listCards()).count).toBe(0);
  if (!removed) throw new Error('nothing was handed back');
  await restoreCards([removed]);
  expect((await kept('one')).photos).toEqual([entry]);
  expect([...new Uint8Array((await readPhotos('one'))[0]?.bytes ?? new ArrayBuffer(0))]).toEqual([1, 2, 3]);
});

const damage = async (id: string): Promise<void> => {
  const db = await jobsDb();
  await db.put('cards', { ...(await kept(id)), coats: 'gone' });
};

it('neither shows nor overwrites nor lists as sound what is no card', async () => {
  await addCard(cardOf('one'));
  const seen = await kept('one');
  await damage('one');
  expect(await readOne('one')).toMatchObject({ kind: 'unreadable', raw: { coats: 'gone' } });
  expect((await changeCard(seen, (card) => ({ ...card, notes: 'x' }))).kind).toBe('unreadable');
  await putCards([cardOf('one')], []);
  expect(await noteFlaw('one', { defect: 'cloudy-film', answers: [] })).toBe('refused');
  expect(await readRaw()).toMatchObject([{ coats: 'gone' }]);
});

it('makes the list anew where it has come apart from the cards', async () => {
  await addCard(cardOf('one', 'Chair'));
  await addCard(cardOf('two'));
  const db = await jobsDb();
  await db.delete('summaries', 'one');
  expect((await (await listCards()).all()).map(({ id }) => id).sort()).toEqual(['one', 'two']);
  expect(await db.count('summaries')).toBe(2);
  await damage('two');
  await db.clear('summaries');
  expect((await (await listCards()).all()).find(({ id }) => id === 'two')?.summary).toBeUndefined();
});

it('notes what a walk found, once, with the repair and that it is settled', async () => {
  await addCard(cardOf('one'));
  const found = {
    defect: 'lap-marks',
    answers: [['sheen-only', 'yes']] as ['sheen-only', 'yes'][],
    address: '/defects/lap-marks/stage-cured/',
  };
  expect(await noteFlaw('one', found)).toBe('saved');
  expect(await noteFlaw('one', found)).toBe('saved');
  expect(await noteRepair('one', { remedy: 'full-panel-recoat' })).toBe('saved');
  const card = await kept('one');
  expect(card.flaws).toMatchObject([found]);
  expect(card.repairs).toMatchObject([{ remedy: 'full-panel-recoat', flaw: card.flaws[0]?.id }]);
  expect(await setSettled('one', card.flaws[0]?.id ?? '')).toBe('saved');
  expect((await kept('one')).flaws[0]?.settledAt).toBeGreaterThan(NOW);
  // On another part of the piece it is another flaw, with a repair of its own.
  const inCorner = { ...found, part: 'inside-corner' as const };
  for (const _ of ['found', 'read again']) expect(await noteFlaw('one', inCorner)).toBe('saved');
  expect((await kept('one')).flaws).toMatchObject([found, inCorner]);
  expect(await noteFlaw('nowhere', found)).toBe('gone');
});

it('keeps a flaw that is found again as one open entry with both days and the answers of now', async () => {
  await addCard(cardOf('one'));
  await noteFlaw('one', { defect: 'cloudy-film', answers: [], address: '/defects/cloudy-film/stage-wet/' });
  const [first] = (await kept('one')).flaws;
  const again = { defect: 'cloudy-film', answers: [['even', 'yes']] as [string, 'yes'][] };
  await noteFlaw('one', { ...again, address: '/defects/cloudy-film/stage-recoatable/' });
  const { flaws } = await kept('one');
  expect(flaws).toMatchObject([
    { ...again, id: first?.id, foundAt: first?.foundAt, address: '/defects/cloudy-film/stage-recoatable/' },
  ]);
  expect(flaws[0]?.changedAt).toBeGreaterThan(NOW);
});

it('settles the flaw that a repair was done for, not another that was found later', async () => {
  await addCard(cardOf('one'));
  await noteFlaw('one', { defect: 'lap-marks', answers: [] });
  await noteFlaw('one', { defect: 'cloudy-film', answers: [] });
  await noteRepair('one', { remedy: 'full-panel-recoat' }, 'lap-marks');
  expect(await settleRepaired('one', 'full-panel-recoat')).toBe('saved');
  const { flaws } = await kept('one');
  const open = (defect: string) => flaws.find((flaw) => flaw.defect === defect)?.settledAt === undefined;
  expect([open('lap-marks'), open('cloudy-film')]).toEqual([false, true]);
});

it('brings in a file whole: what was taken off there goes with its photo, what was taken away there with all', async () => {
  await addCard(cardOf('one'));
  await addPhoto(photoOf('p1', 'one'), (card) => ({ ...card, photos: [entry] }));
  await addCard(cardOf('two', 'Chair'));
  await addPhoto(photoOf('p2', 'two'), (card) => ({ ...card, photos: [{ ...entry, id: 'p2' }] }));
  const mine = await kept('one');
  const theirs = withoutPhoto(mine, 'p1', mine.changedAt + 5);
  const removed = [{ id: 'two', name: 'Chair', at: Date.now() + 1e6 }];
  const cards = [await kept('one'), await kept('two')];
  const rows = previewShelves({ cards, removed: [] }, { cards: [theirs], removed });
  expect(rows.map(({ id, kind }) => [id, kind])).toEqual([
    ['one', 'theirs-newer'],
    ['two', 'goes'],
  ]);
  const gone = await importCards({ cards: [theirs], photos: [photoOf('p1', 'one')], removed, rows });
  expect((await kept('one')).photos).toEqual([]);
  expect(await readPhotos('one')).toEqual([]);
  expect(await readOne('two')).toEqual({ kind: 'gone' });
  expect(gone.map(({ id, photos }) => [id, photos.map(({ id }) => id)])).toEqual([['two', ['p2']]]);
  expect(await readRemoved()).toEqual(removed);
  expect((await listCards()).count).toBe(1);
  // A card that was changed here meanwhile stays, whatever the preview said.
  await addCard({ ...cardOf('two', 'Chair'), changedAt: Date.now() + 2e6 });
  expect(await importCards({ cards: [], photos: [], removed, rows })).toEqual([]);
  expect((await kept('two')).name).toBe('Chair');
  expect(await readRemoved()).toEqual([]);
});
