import { hasRoomFor, Shelf, tryCopy, type Versions } from '../../shared/second-copy.ts';
import { cardUnder, keyOf, photosIn, photoUnder } from './photos.ts';
import { changedOn, photosOn } from './raw-card.ts';
import type { JobsDb, KeptClash, KeptPhoto } from './records.ts';

/** What a change touches, so that the second copies follow it. */
export type Touched = {
  readonly cards: readonly string[];
  /** Photos that it writes anew or takes away. Those that merely go with their card need not be named. */
  readonly photos?: readonly Pick<KeptPhoto, 'card' | 'id'>[];
};

/** An edit: the card is there, newer than all of its copies, and no other photo than those named came or went. */
export type Edited = {
  readonly card: string;
  readonly photos?: Touched['photos'];
  /** The card and its open clashes as the edit left them: nobody else writes before the copy is made. */
  readonly standing: Standing;
};
/** What a copy of a card holds. */
type Standing = { readonly raw: unknown; readonly clashes: readonly KeptClash[] };

export const SHELVES = {
  /** A card as it lies in the store with its open clashes, by when it was changed. */
  cards: new Shelf('cards'),
  /** A photo, by its card and its id; it has one version. */
  photos: new Shelf('photos'),
  /** What was set aside, without its photos, which stand with the others under `asideOf`. */
  aside: new Shelf('aside'),
  removed: new Shelf('removed'),
} as const;
export type Shelves = Readonly<Record<keyof typeof SHELVES, Versions>>;

/** The one version of a photo. */
export const PHOTO = 0;
/** Whose photos those of a card that was set aside are: another of the same id may stand in the list. */
const ASIDE = 'aside/';
export const asideOf = (card: string): string => ASIDE + card;
/** The card of a key among the copies of photos, also of one that was set aside. */
export const cardOf = (key: string): string => {
  const owner = cardUnder(key);
  return owner.startsWith(ASIDE) ? owner.slice(ASIDE.length) : owner;
};
const JSON_TYPE = 'application/json';

/** A record as text; nothing of one that no text can hold, as damage may have left it. */
const textOf = (record: unknown): string | undefined => {
  try {
    return JSON.stringify(record);
  } catch (error) {
    if (error instanceof TypeError) return undefined;
    throw error;
  }
};

const putText = async (shelf: Shelf, id: string, at: number, record: unknown, others?: readonly number[]) => {
  const text = textOf(record);
  if (text !== undefined) await shelf.put(id, at, text, JSON_TYPE, others);
};

export const readShelves = async (): Promise<Shelves> => {
  const { cards, photos, aside, removed } = SHELVES;
  const [one, two, three, four] = await Promise.all([cards.all(), photos.all(), aside.all(), removed.all()]);
  return { cards: one, photos: two, aside: three, removed: four };
};

const putPhoto = async (photo: KeptPhoto): Promise<void> => {
  if (await hasRoomFor(photo.bytes.byteLength))
    await SHELVES.photos.put(keyOf(photo.card, photo.id), PHOTO, photo.bytes, photo.type, [], 1);
};

/** All that lies in the store under the id of a card. */
const standingIn = async (db: JobsDb, id: string) => {
  const change = db.transaction(['cards', 'photos', 'clashes', 'aside', 'removed'], 'readonly');
  const [raw, photos, clashes, aside, removed] = await Promise.all([
    change.objectStore('cards').get(id),
    change.objectStore('photos').index('card').getAllKeys(id),
    change.objectStore('clashes').index('card').getAll(id),
    change.objectStore('aside').get(id),
    change.objectStore('removed').get(id),
  ]);
  return { raw, photos: photos.map(photoUnder), clashes, aside, removed };
};

const putCopy = (id: string, { raw, clashes }: Standing, others?: readonly number[]): Promise<void> =>
  putText(SHELVES.cards, id, changedOn(raw), { card: raw, clashes }, others);

const photosOf = async (db: JobsDb, card: string): Promise<readonly KeptPhoto[]> =>
  photosIn(await db.getAllFromIndex('photos', 'card', card));

/** After an edit: the card as it was written, and the photo that came or went with it. */
const followEdit = async (db: JobsDb, { card: id, photos = [], standing }: Edited): Promise<void> => {
  const there = photos.length ? await photosOf(db, id) : [];
  for (const { id: photo } of photos) {
    const found = there.find((one) => one.id === photo);
    if (found) await putPhoto(found);
    else await SHELVES.photos.drop(keyOf(id, photo), [PHOTO]);
  }
  await putCopy(id, standing);
};

type Photos = ReadonlyMap<string, ReadonlySet<string>>;
const NONE: ReadonlySet<string> = new Set();

const dropPhotos = async (owner: string, copied: ReadonlySet<string>, wanted: readonly string[]) => {
  for (const photo of copied)
    if (!wanted.includes(photo)) await SHELVES.photos.drop(keyOf(owner, photo), [PHOTO]);
};

/** Makes the copies under an id what lies in the store under it, whatever stood there. */
const followOne = async (
  db: JobsDb,
  id: string,
  there: Shelves,
  copied: Photos,
  written: Photos,
): Promise<void> => {
  const standing = await standingIn(db, id);
  const { raw, aside, removed } = standing;
  const versions = (shelf: keyof Shelves) => there[shelf].get(id) ?? [];
  const own = copied.get(id) ?? NONE;
  const beside = copied.get(asideOf(id)) ?? NONE;
  // First what comes, then what goes; and the note that a card was taken away before its copies are.
  if (removed) await putText(SHELVES.removed, id, removed.at, removed, versions('removed'));
  const missing = standing.photos.filter((photo) => !own.has(photo) || written.get(id)?.has(photo));
  const found = missing.length ? await photosOf(db, id) : [];
  for (const photo of found) if (missing.includes(photo.id)) await putPhoto(photo);
  if (aside) {
    const other = !versions('aside').includes(aside.at);
    for (const photo of aside.photos)
      if (other || !beside.has(photo.id)) await putPhoto({ ...photo, card: asideOf(id) });
    const ids = aside.photos.map((photo) => photo.id);
    await putText(SHELVES.aside, id, aside.at, { ...aside, photos: ids }, versions('aside'));
  }
  if (raw !== undefined) await putCopy(id, standing, versions('cards'));
  else await SHELVES.cards.drop(id, versions('cards'));
  // One that stands on the card is wanted also where the store has not got it: there may have been no room for it.
  await dropPhotos(id, own, [...standing.photos, ...photosOn(raw)]);
  await dropPhotos(asideOf(id), beside, aside?.photos.map((photo) => photo.id) ?? []);
  if (!aside) await SHELVES.aside.drop(id, versions('aside'));
  if (!removed) await SHELVES.removed.drop(id, versions('removed'));
};

/** Ids of photos by their card, out of keys that name both. */
export const photosByCard = (keys: Iterable<string>): Photos => {
  const found = new Map<string, Set<string>>();
  for (const key of keys) {
    const card = cardUnder(key);
    found.set(card, (found.get(card) ?? new Set()).add(photoUnder(key)));
  }
  return found;
};

/** So many cards are followed at once, and within one limit of time. */
const BATCH = 24;
const LANES = 6;

/**
 * Makes the copies of these cards what lies in the store. Only for the one that writes: see `asOnlyWriter`. What was
 * known to stand there may be older than that: what came since is newer than the store was then, and stays.
 */
export const followWhole = async (
  db: JobsDb,
  { cards, photos = [] }: Touched,
  known?: Shelves,
): Promise<void> => {
  const ids = [...new Set(cards)];
  if (!ids.length) return;
  const there = known ?? (await tryCopy(readShelves));
  if (!there) return;
  const copied = photosByCard([...there.photos.keys()]);
  const written = photosByCard(photos.map(({ card, id }) => keyOf(card, id)));
  for (let from = 0; from < ids.length; from += BATCH) {
    const left = ids.slice(from, from + BATCH);
    const lane = async () => {
      for (let id = left.pop(); id !== undefined; id = left.pop()) {
        await followOne(db, id, there, copied, written);
      }
    };
    await tryCopy(async () => void (await Promise.all(Array.from({ length: LANES }, lane))));
  }
};

/** Lets the second copies follow a change that is on the disk. Never fails: a copy is more than what was promised. */
export const followCopies = async (db: JobsDb, done: Touched | Edited): Promise<void> => {
  if ('standing' in done) await tryCopy(() => followEdit(db, done));
  else await followWhole(db, done);
};

/** Takes all copies of photos away, where storage is full; false where there were none. */
export const dropPhotoCopies = async (): Promise<boolean> =>
  (await tryCopy(() => SHELVES.photos.clear())) ?? false;
