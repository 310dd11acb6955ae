/** Nothing gets into the store that its own reader would not take, and there is a way back from what lies there. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { changed, newCard, withCoat, withFlaw } from '#engine/jobs/card.ts';
import { LATEST_INSTANT, MOST, withMine } from '#engine/jobs.ts';
import type { CardCoat, JobCard } from '#engine/model/job-card.ts';
import { readCard, salvageCard } from '#engine/model/read-card.ts';
import { closeJobsDb, jobsDb } from '../../site/client/jobs/store/db.ts';
import { faultOf } from '../../site/client/jobs/store/fault.ts';
import {
  addCard,
  addPhoto,
  changeCard,
  dropAside,
  JobsFault,
  mendCard,
  noteFlaw,
  putAsideBack,
  putCards,
  readAside,
  readClashes,
  readOne,
  readPhotos,
  removeCard,
  restoreCards,
  setCardAside,
  settleClash,
} from '../../site/client/jobs/store/index.ts';
import { withinTime } from '../../site/client/jobs/store/time-limit.ts';
import { wholly } from '../../site/client/jobs/store/write.ts';

const NOW = Date.UTC(2026, 10, 23, 17);
const cardOf = (id: string, more: Partial<JobCard> = {}): JobCard => ({
  ...newCard(
    { name: 'Navy dresser', kind: 'furniture', base: 'chalk-paint', tone: 'dark', age: 'none' },
    id,
    NOW,
  ),
  ...more,
});
const coatOf = (id: string): CardCoat => ({
  id,
  laidAt: NOW,
  product: 'shellac',
  celsius: 21,
  relativeHumidity: 0.5,
});
const coats = (count: number) => Array.from({ length: count }, (_, index) => coatOf(`c${index}`));
const kept = async (id: string): Promise<JobCard> => {
  const read = await readOne(id);
  if (read.kind !== 'card') throw new Error(read.kind);
  return read.card;
};
/** Past the door, as no code of the site does. */
const damage = async (id: string, more: object): Promise<void> => {
  const db = await jobsDb();
  await db.put('cards', { ...(await kept(id)), ...more });
};

beforeEach(async () => {
  await closeJobsDb();
  globalThis.indexedDB = new IDBFactory();
});

it.each([
  // The first digit of a year typed into a field for a date: the year 2.
  ['baseLaidAt', (card: JobCard) => changed(card, { baseLaidAt: -62_077_761_000_000 }, NOW)],
  ['baseLaidAt', (card: JobCard) => changed(card, { baseLaidAt: LATEST_INSTANT + 1 }, NOW)],
  ['name', (card: JobCard) => changed(card, { name: ' ' }, NOW)],
  ['notes', (card: JobCard) => changed(card, { notes: 'x'.repeat(4001) }, NOW)],
  ['coats', (card: JobCard) => withCoat(card, coatOf('one-more'), NOW)],
  [
    'coats, entry 100, label',
    (card: JobCard) =>
      withCoat(card, { ...coatOf('c99'), label: { minutes: { cure: { from: 9, to: 1 } } } }, NOW),
  ],
])('refuses a %s that no reader takes, names it, and keeps what was there', async (field, by) => {
  const card = cardOf('one', { coats: coats(MOST.coats) });
  await addCard(card);
  const outcome = await changeCard(await kept('one'), by);
  expect(outcome).toMatchObject({
    kind: 'refused',
    refusals: [{ field: expect.stringContaining(field.split(',')[0] ?? '') }],
  });
  expect(await kept('one')).toEqual(card);
});

it('refuses a new card that no reader takes, on a device whose clock stands before 1970', async () => {
  await expect(addCard({ ...cardOf('one'), madeAt: -1, changedAt: -1 })).rejects.toMatchObject({
    name: 'CardRefused',
    refusals: [{ field: 'madeAt' }, { field: 'changedAt' }],
  });
  expect(await readOne('one')).toEqual({ kind: 'gone' });
});

it('changes and takes away a card of the last moment that a card may hold', async () => {
  await addCard(cardOf('one', { changedAt: LATEST_INSTANT }));
  const outcome = await changeCard(await kept('one'), (card) => changed(card, { notes: 'x' }, NOW));
  expect(outcome.kind).toBe('saved');
  expect((await kept('one')).notes).toBe('x');
  // A second tab that saw the older card is still heard as a second one: content counts, not the time.
  const late = await changeCard(cardOf('one', { changedAt: LATEST_INSTANT }), (card) =>
    changed(card, { notes: 'y' }, NOW),
  );
  expect(late).toMatchObject({ kind: 'saved', merged: true, clashes: [{ mine: 'y', theirs: 'x' }] });
  await removeCard('one');
  const [gone] = await (await jobsDb()).getAll('removed');
  expect(gone?.at).toBe(LATEST_INSTANT);
});

it('says of a flaw too many that the card is full', async () => {
  const flaws = Array.from({ length: MOST.flaws }, (_, index) => ({
    id: `f${index}`,
    foundAt: NOW,
    defect: 'cloudy-film',
    answers: [],
  }));
  await addCard(cardOf('one', { flaws }));
  expect(await noteFlaw('one', { defect: 'lap-marks', answers: [] })).toBe('full');
  expect((await kept('one')).flaws.length).toBe(MOST.flaws);
});

it('keeps both versions of every clash until she has chosen', async () => {
  await addCard(cardOf('one'));
  const seen = await kept('one');
  await changeCard(seen, (card) => changed(card, { notes: 'theirs' }, NOW));
  for (const notes of ['mine, first', 'mine, second', 'mine, third'])
    await changeCard(seen, (card) => changed(card, { notes }, NOW));
  const clashes = await readClashes('one');
  expect(clashes.map((clash) => [clash.mine, clash.theirs])).toEqual([
    ['mine, first', 'theirs'],
    ['mine, second', 'theirs'],
    ['mine, third', 'theirs'],
  ]);
  const [first, second] = clashes;
  if (!first || !second) throw new Error('no clash');
  await settleClash(first);
  expect((await kept('one')).notes).toBe('theirs');
  await settleClash(second, (card) => withMine(card, second, NOW));
  expect((await kept('one')).notes).toBe('mine, second');
  expect((await readClashes('one')).map(({ mine }) => mine)).toEqual(['mine, third']);
  // They go and come back with their card.
  const removed = await removeCard('one');
  expect(await readClashes('one')).toEqual([]);
  if (removed) await restoreCards([removed]);
  expect((await readClashes('one')).length).toBe(1);
});

it('puts what the buyer does to a piece together as one answer, not entry by entry', async () => {
  await addCard(cardOf('one', { trials: ['water', 'heat'] }));
  const seen = await kept('one');
  await changeCard(seen, (card) => changed(card, { notes: 'x' }, NOW));
  await changeCard(seen, (card) => changed(card, { trials: ['water', 'heat', 'child'] }, NOW));
  expect((await kept('one')).trials).toEqual(['water', 'heat', 'child']);
});

it('sees no clash where only the order of keys differs', async () => {
  const label = { minutes: { recoat: { from: 1, to: 2 }, cure: { from: 3, to: 4 } } };
  await addCard(cardOf('one', { label }));
  const seen = await kept('one');
  await changeCard(seen, (card) => changed(card, { notes: 'theirs' }, NOW));
  const turned = { minutes: { cure: { to: 4, from: 3 }, recoat: { to: 2, from: 1 } } };
  const outcome = await changeCard({ ...seen, label: turned }, (card) =>
    changed(card, { label: turned }, NOW),
  );
  expect(outcome).toMatchObject({ kind: 'saved', clashes: [] });
});

const photo = (card: string, byte: number) => ({
  id: 'ph',
  card,
  type: 'image/webp',
  bytes: new Uint8Array([byte]).buffer,
});
const ENTRY = { id: 'ph', takenAt: NOW, width: 4, height: 3 };
const byteOf = async (card: string) => [
  ...new Uint8Array((await readPhotos(card))[0]?.bytes ?? new ArrayBuffer(0)),
];

it('keeps a photo of one card apart from that of another with the same id', async () => {
  await addCard(cardOf('one'));
  await addPhoto(photo('one', 1), (card) => ({ ...card, photos: [ENTRY] }));
  await putCards([cardOf('two', { photos: [ENTRY] })], [photo('two', 2)]);
  expect([await byteOf('one'), await byteOf('two')]).toEqual([[1], [2]]);
});

it('mends a card from its file, sets it aside as it was found, and puts it back', async () => {
  await addCard(cardOf('one', { notes: 'By the window.' }));
  await addPhoto(photo('one', 7), (card) => ({ ...card, photos: [ENTRY] }));
  const sound = await kept('one');
  await damage('one', { baseLaidAt: -1 });
  expect(await readOne('one')).toMatchObject({ kind: 'unreadable', faults: [{ field: 'baseLaidAt' }] });
  await mendCard(sound);
  expect(await kept('one')).toEqual(sound);
  expect(await byteOf('one')).toEqual([7]);
  expect(await readAside()).toMatchObject([{ id: 'one', raw: { baseLaidAt: -1 } }]);
  const [before] = await readAside();
  if (!before) throw new Error('nothing aside');
  expect(await putAsideBack(before)).toBe(false);
  await dropAside('one');
  expect(await readAside()).toEqual([]);

  await damage('one', { baseLaidAt: -1 });
  await setCardAside('one');
  expect(await readOne('one')).toEqual({ kind: 'gone' });
  const [aside] = await readAside();
  expect(aside).toMatchObject({ name: 'Navy dresser', photos: [{ id: 'ph' }] });
  if (aside) expect(await putAsideBack(aside)).toBe(true);
  expect((await readOne('one')).kind).toBe('unreadable');
  expect(await byteOf('one')).toEqual([7]);
});

it('takes away a card that cannot be read, and puts it back as it was', async () => {
  await addCard(cardOf('one'));
  await damage('one', { coats: 'gone' });
  const removed = await removeCard('one');
  expect(await readOne('one')).toEqual({ kind: 'gone' });
  if (removed) await restoreCards([removed]);
  expect(await readOne('one')).toMatchObject({ kind: 'unreadable', raw: { coats: 'gone' } });
});

it('salvages what reads of a damaged record and names the rest', () => {
  const card = withFlaw(
    cardOf('one', { coats: coats(101), notes: 'kept' }),
    { id: 'f', foundAt: NOW, defect: 'cloudy-film', answers: [] },
    NOW,
  );
  const spoiled = { ...card, baseLaidAt: -62_077_761_000_000, shoe: 4, repairs: [{ id: 'r' }] };
  const salvaged = salvageCard(spoiled, 'one', NOW);
  expect(salvaged?.card).toMatchObject({
    notes: 'kept',
    name: 'Navy dresser',
    flaws: [{ id: 'f' }],
    repairs: [],
  });
  expect(salvaged?.card.coats.length).toBe(MOST.coats);
  expect(salvaged?.card.baseLaidAt).toBeUndefined();
  expect(salvaged?.leftOut.map(({ field }) => field)).toEqual(
    expect.arrayContaining(['baseLaidAt', 'coats', 'shoe', expect.stringContaining('repairs, entry 1')]),
  );
  // Piece, base and tone are not guessed at.
  expect(salvageCard({ ...card, base: 'granite' }, 'one', NOW)).toBeUndefined();
  expect(salvageCard('no card', 'one', NOW)).toBeUndefined();
});

describe('of labels, a card that is salvaged', () => {
  const GOOD = { minutes: { touch: { from: 60, to: 60 }, recoat: { from: 120, to: 120 } } };
  /** Dry enough for the next coat before it is dry to the touch. */
  const BAD = { minutes: { touch: { from: 120, to: 120 }, recoat: { from: 60, to: 60 } } };
  const photo = { id: 'ph', takenAt: NOW, width: 4, height: 3 };

  it('keeps all that hold where only an id stands twice', () => {
    const card = cardOf('one', { label: GOOD, coats: [{ ...coatOf('a'), label: GOOD }, coatOf('b')] });
    const salvaged = salvageCard({ ...card, photos: [photo, photo] }, 'one', NOW);
    expect(salvaged?.card).toEqual({ ...card, photos: [photo] });
    expect(salvaged?.leftOut.map(({ field }) => field)).toEqual(['photos']);
  });

  it('loses the one that contradicts itself, by its name', () => {
    const card = cardOf('one', {
      label: GOOD,
      coats: [
        { ...coatOf('a'), label: GOOD },
        { ...coatOf('b'), label: BAD },
      ],
    });
    const salvaged = salvageCard(card, 'one', NOW);
    expect(salvaged?.card).toEqual({
      ...card,
      coats: [{ ...coatOf('a'), label: GOOD }, coatOf('b')],
    });
    expect(salvaged?.leftOut.map(({ field }) => field)).toEqual(['coats, entry 2, label']);
  });

  it('names every one that it loses, be they more than a page would list', () => {
    const many = coats(40).map((coat) => ({ ...coat, label: BAD }));
    const salvaged = salvageCard(cardOf('one', { label: BAD, coats: many }), 'one', NOW);
    expect(salvaged?.card.coats).toEqual(coats(40));
    expect(salvaged?.card.label).toBeUndefined();
    expect(salvaged?.leftOut.length).toBe(41);
  });
});

it('salvages only what its reader takes, whatever was damaged', () => {
  const card = cardOf('one', { coats: coats(2), trials: ['water'], night: { celsius: 9 } });
  const keys = Object.keys(card);
  fc.assert(
    fc.property(
      fc.constantFrom(...keys),
      fc.json().map((text): unknown => JSON.parse(text)),
      (key, value) => {
        const salvaged = salvageCard({ ...card, [key]: value }, 'one', NOW);
        if (salvaged) expect(readCard(salvaged.card)).toEqual({ ok: true, value: salvaged.card });
        else expect(['version', 'kind', 'base', 'tone']).toContain(key);
      },
    ),
  );
});

it('calls no bug and no failed fetch a fault of the store', () => {
  const bug = new TypeError('undefined is not a function');
  expect(faultOf(bug)).toBe(bug);
  expect(faultOf(new DOMException('', 'QuotaExceededError'))).toMatchObject({ trouble: 'full' });
  expect(faultOf(new DOMException('', 'TimeoutError'))).toMatchObject({ trouble: 'silent' });
});

it('tells no slip of ours as a word about the storage, and leaves the card as it was', async () => {
  const one = cardOf('one');
  await addCard(one);
  await expect(addCard(cardOf('one', { notes: 'again' }))).rejects.toMatchObject({ name: 'ConstraintError' });
  const photo = { id: 'p', card: 'one', type: 'image/webp', bytes: () => undefined };
  const added = addPhoto(photo as never, (card) => ({ ...card, notes: 'with a photo' }));
  await expect(added).rejects.toMatchObject({ name: 'DataCloneError' });
  expect(await kept('one')).toEqual(one);
});

it('tells what ended a change from outside, not what the work then ran into', async () => {
  const db = await jobsDb();
  const change = wholly(db, async (open) => {
    await open.objectStore('cards').get('one');
    // As a browser does that has no room left, or is told to clear what it keeps.
    open.abort();
    await open.objectStore('cards').put(cardOf('one'));
  }).catch(faultOf);
  expect(await change).toMatchObject({ trouble: 'unknown' });
  expect(await readOne('one')).toEqual({ kind: 'gone' });
});

it('says that a store is silent which never answers', async () => {
  vi.useFakeTimers();
  const answer = withinTime(new Promise(() => undefined)).catch((error: unknown) => error);
  await vi.advanceTimersByTimeAsync(16_000);
  expect(await answer).toBeInstanceOf(JobsFault);
  expect(await answer).toMatchObject({ trouble: 'silent' });
  vi.useRealTimers();
});

it('tells truly that the store was deleted in another tab', async () => {
  const { onJobsTrouble } = await import('../../site/client/jobs/store/db.ts');
  const told: unknown[] = [];
  onJobsTrouble((trouble) => told.push(trouble), new AbortController().signal);
  await addCard(cardOf('one'));
  await new Promise((done) => {
    indexedDB.deleteDatabase('halfdry').onsuccess = done;
  });
  expect(told).toEqual(['deleted']);
  expect(await readOne('one')).toEqual({ kind: 'gone' });
});
