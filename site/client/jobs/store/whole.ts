/** Finds what the store has lost, puts it back from the second copies, and lets the copies follow what they missed. */
import type { JobCard, RemovedCard } from '#engine/model/job-card.ts';
import { canCopy, KEPT, readData, type Shelf, tryCopy } from '../../shared/second-copy.ts';
import { keep, recall } from '../../shared/storage.ts';
import { refusalOf } from '../../shared/storage-refusal.ts';
import {
  asideOf,
  cardOf,
  followWhole,
  PHOTO,
  photosByCard,
  readShelves,
  SHELVES,
  type Shelves,
} from './copies.ts';
import { isEmpty } from './db.ts';
import { keyOf, photoUnder, putPhoto } from './photos.ts';
import { changedOn, nameOn } from './raw-card.ts';
import { cardReader } from './reader.ts';
import type { JobsDb, KeptClash, KeptPhoto, SetAside } from './records.ts';
import { asOnlyMender, asOnlyWriter, tellTabs } from './tabs.ts';
import { withinTime } from './time-limit.ts';
import { putCard, wholly } from './write.ts';

/** What lies in the store, without the cards themselves: when each was changed; nothing of one that can not be read. */
const standingIn = async (db: JobsDb) => {
  const change = db.transaction(['cards', 'summaries', 'photos', 'aside', 'removed'], 'readonly');
  const [ids, listed, aside, removed] = await Promise.all([
    change.objectStore('cards').getAllKeys(),
    change.objectStore('summaries').getAll(),
    change.objectStore('aside').getAll(),
    change.objectStore('removed').getAll(),
  ]);
  const photos: string[] = [];
  const byCard = change.objectStore('photos').index('card');
  for (let at = await byCard.openKeyCursor(); at; at = await at.continue())
    photos.push(keyOf(at.key, photoUnder(at.primaryKey)));
  const lines = new Map(listed.map((line) => [line.id, line]));
  const cards = new Map<string, number | undefined>();
  for (const id of ids) {
    const line = lines.get(id);
    // Before the list was made anew there may be no line of it.
    const at = line ? line.summary && line.changedAt : changedOn(await db.get('cards', id));
    cards.set(id, at);
  }
  for (const one of aside) for (const { id } of one.photos) photos.push(keyOf(asideOf(one.id), id));
  return {
    cards,
    photos: new Set(photos),
    aside: new Map(aside.map((one) => [one.id, one.at])),
    removed: new Map(removed.map((one) => [one.id, one.at])),
  };
};
type OnDisk = Awaited<ReturnType<typeof standingIn>>;

/** Cards of which a copy is newer than what the store has, if it has one at all, and that were not taken away since. */
const lostIn = ({ cards, aside, removed }: OnDisk, there: Shelves): readonly string[] =>
  [...there.cards].flatMap(([id, [newest = 0]]) => {
    const gone = Math.max(removed.get(id) ?? -1, there.removed.get(id)?.[0] ?? -1);
    if (cards.has(id)) return newest > (cards.get(id) ?? newest) ? id : [];
    return newest > gone && !aside.has(id) ? id : [];
  });

type Copied = { readonly card: unknown; readonly clashes: readonly KeptClash[] };
const isCopied = (data: unknown): data is Copied =>
  typeof data === 'object' &&
  data !== null &&
  'card' in data &&
  'clashes' in data &&
  Array.isArray(data.clashes);

type Found = {
  readonly sound: { readonly card: JobCard; readonly clashes: readonly KeptClash[] }[];
  readonly broken: SetAside[];
};

/** The copies of one card that can be read as text, the newest first. */
async function* copiesOf(id: string, there: Shelves): AsyncGenerator<Copied> {
  for (const at of there.cards.get(id) ?? []) {
    const data = await readData(SHELVES.cards, id, at);
    if (isCopied(data)) yield data;
  }
}

const READ_LANES = 12;

/** The newest copy of each that can be read; where none can, what is there of it, to be set aside. */
const readCopies = async (ids: readonly string[], there: Shelves): Promise<Found> => {
  const read = await cardReader();
  const found: Found = { sound: [], broken: [] };
  const readOne = async (id: string): Promise<void> => {
    const unsound: unknown[] = [];
    for await (const { card: raw, clashes } of copiesOf(id, there)) {
      const card = read(raw);
      if (card.ok && card.value.id === id) return void found.sound.push({ card: card.value, clashes });
      unsound.push(raw);
    }
    const [raw] = unsound;
    if (raw === undefined) return;
    found.broken.push({ id, name: nameOn(raw, id), raw, photos: [], clashes: [], at: Date.now() });
  };
  const left = [...ids];
  const lane = async () => {
    for (let id = left.pop(); id !== undefined; id = left.pop()) await readOne(id);
  };
  await Promise.all(Array.from({ length: READ_LANES }, lane));
  return found;
};

/** The newest second copy of a card that can be read: for one whose record can not. */
export const soundCopy = async (id: string): Promise<JobCard | undefined> => {
  const there = await tryCopy(readShelves);
  return there && (await readCopies([id], there)).sound[0]?.card;
};

const isRemoved = (data: unknown): data is RemovedCard =>
  typeof data === 'object' && data !== null && 'id' in data && 'name' in data && 'at' in data;
const isAside = (data: unknown): data is Omit<SetAside, 'photos'> & { readonly photos: readonly string[] } =>
  isRemoved(data) && 'raw' in data && 'clashes' in data && 'photos' in data && Array.isArray(data.photos);

const readAll = async <T>(
  shelf: Shelf,
  versions: Shelves['removed'],
  is: (data: unknown) => data is T,
): Promise<T[]> => {
  const all: T[] = [];
  for (const [id, ats] of versions)
    for (const at of ats) {
      const data = await readData(shelf, id, at);
      if (!is(data)) continue;
      all.push(data);
      break;
    }
  return all;
};

const readPhoto = async (card: string, id: string): Promise<KeptPhoto | undefined> => {
  const copy = await SHELVES.photos.read(keyOf(card, id), PHOTO);
  if (!copy) return undefined;
  return { id, card, type: copy.headers.get('Content-Type') ?? '', bytes: await copy.arrayBuffer() };
};

/** Of photos so many are held in memory and written at once. */
const PHOTOS_AT_ONCE = 12;

/** Puts the photos of these cards back, as far as there is room. */
const putPhotosBack = async (db: JobsDb, there: Shelves, cards: readonly JobCard[]): Promise<void> => {
  const copied = photosByCard(there.photos.keys());
  const wanted = cards.flatMap(({ id: card }) => [...(copied.get(card) ?? [])].map((id) => ({ card, id })));
  for (let from = 0; from < wanted.length; from += PHOTOS_AT_ONCE) {
    const some = wanted.slice(from, from + PHOTOS_AT_ONCE);
    const copies = await Promise.all(some.map(({ card, id }) => tryCopy(() => readPhoto(card, id))));
    await wholly(db, async (change) => {
      for (const photo of copies) if (photo) await putPhoto(change, photo);
    });
  }
};

/** How many photos stand on these cards that lie nowhere any more. */
const missingPhotos = async (db: JobsDb, cards: readonly JobCard[]): Promise<number> => {
  let missing = 0;
  for (const { id, photos } of cards) {
    const lying = new Set((await db.getAllKeysFromIndex('photos', 'card', id)).map(photoUnder));
    missing += photos.filter((photo) => !lying.has(photo.id)).length;
  }
  return missing;
};

/** Runs what a full or closing store may end early: what comes after it must be done all the same. */
const asFarAsItGoes = async (work: () => Promise<void>): Promise<void> => {
  try {
    await work();
  } catch (error) {
    if (!refusalOf(error)) throw error;
  }
};

const noteBack = (cards: number, photosLost: number): void => {
  if (!cards) return;
  const before = recall('cards-back');
  keep('cards-back', {
    cards: cards + (before?.cards ?? 0),
    photosLost: photosLost + (before?.photosLost ?? 0),
  });
};

/**
 * Puts these cards back in one transaction; before it their photos in some more, since they may be too many to be held
 * at once. Killed between, the store is still empty, and it begins again. What came there meanwhile is left.
 */
const putBack = async (db: JobsDb, ids: readonly string[], there: Shelves, whole: boolean): Promise<void> => {
  const { sound, broken } = await readCopies(ids, there);
  const removed = whole ? await readAll(SHELVES.removed, there.removed, isRemoved) : [];
  const aside = whole ? await readAll(SHELVES.aside, there.aside, isAside) : [];
  const photos: KeptPhoto[] = [];
  for (const one of aside)
    for (const id of one.photos) {
      const photo = await tryCopy(() => readPhoto(asideOf(one.id), id));
      if (photo) photos.push({ ...photo, card: one.id });
    }
  await asFarAsItGoes(() =>
    putPhotosBack(
      db,
      there,
      sound.map(({ card }) => card),
    ),
  );
  const read = await cardReader();
  const back = await wholly(db, async (change) => {
    const [cards, gone] = [change.objectStore('cards'), change.objectStore('removed')];
    for (const one of removed) if ((await cards.get(one.id)) === undefined) await gone.put(one);
    for (const { photos: named, ...one } of aside) {
      const own = photos.filter(({ card, id }) => card === one.id && named.includes(id));
      await change.objectStore('aside').put({ ...one, photos: own });
    }
    for (const one of broken)
      if ((await cards.get(one.id)) === undefined) await change.objectStore('aside').put(one);
    const put: JobCard[] = [];
    for (const { card, clashes } of sound) {
      const [now, note] = await Promise.all([cards.get(card.id), gone.get(card.id)]);
      if ((note && note.at > card.changedAt) || (now !== undefined && changedOn(now) >= card.changedAt))
        continue;
      put.push(await putCard(change, read, card));
      for (const clash of clashes) await change.objectStore('clashes').put(clash);
    }
    return put;
  });
  noteBack(back.length, await missingPhotos(db, back));
  if (back.length) tellTabs(back.map(({ id }) => id));
};

/** Fills an empty store from its second copies, if there are any. */
export const fillEmpty = (db: JobsDb): Promise<void> =>
  asOnlyMender(async () => {
    if (!(await isEmpty(db))) return;
    const there = await tryCopy(readShelves);
    if (!there || Object.values(there).every(({ size }) => !size)) return;
    await putBack(db, lostIn(await standingIn(db), there), there, true);
  });

/**
 * The cards whose copies are not what lies in the store. Damaged records are left alone, as are their sound copies; and
 * copies of which the store knows nothing at all, since nothing says that they are wanted no more.
 */
const behindIn = (standing: OnDisk, there: Shelves): readonly string[] => {
  const { cards, photos, aside, removed } = standing;
  const behind = new Set<string>();
  const compare = (now: ReadonlyMap<string, number | undefined>, copies: Shelves['cards']) => {
    for (const [id, at] of now) if (at !== undefined && copies.get(id)?.[0] !== at) behind.add(id);
  };
  compare(cards, there.cards);
  compare(aside, there.aside);
  compare(removed, there.removed);
  for (const id of there.aside.keys()) if (!aside.has(id)) behind.add(id);
  for (const id of there.removed.keys()) if (!removed.has(id)) behind.add(id);
  for (const id of there.cards.keys())
    if (!cards.has(id) && (aside.has(id) || removed.has(id))) behind.add(id);
  // A page knows no versions but its own, so those of earlier visits are left to be taken away here.
  for (const [id, versions] of there.cards)
    if (cards.get(id) !== undefined && versions.length > KEPT) behind.add(id);
  for (const key of photos) if (!there.photos.has(key)) behind.add(cardOf(key));
  for (const key of there.photos.keys()) {
    const card = cardOf(key);
    if (!photos.has(key) && (cards.has(card) || aside.has(card) || removed.has(card))) behind.add(card);
  }
  return [...behind];
};

/** So many cards are followed before another writer may come between. */
const AT_ONCE = 12;

/**
 * Compares the store with its copies, once a visit and when nothing else is done: cards that it lost are put back, and
 * copies that are missing or were left behind (a browser killed between the two, storage that was full, the first visit
 * since there are copies) are made; older ones than are kept go.
 */
export const compareCopies = async (db: JobsDb): Promise<void> => {
  if (!canCopy()) return;
  const standing = await withinTime(standingIn(db));
  const there = await tryCopy(readShelves);
  if (!there) return;
  const lost = lostIn(standing, there);
  if (lost.length) await asOnlyMender(() => putBack(db, lost, there, false));
  const behind = behindIn(standing, there).filter((id) => !lost.includes(id));
  for (let from = 0; from < behind.length; from += AT_ONCE)
    await asOnlyWriter(() => followWhole(db, { cards: behind.slice(from, from + AT_ONCE) }, there));
};
