import type { StoreNames } from 'idb';
import { withoutPhoto } from '#engine/jobs/card.ts';
import { type Clash, mergeChange, sameCard } from '#engine/jobs/three-way.ts';
import { LATEST_INSTANT } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { causeOf, refusalOf } from '../../shared/storage-refusal.ts';
import { clashesIn, keepClashes } from './clashes.ts';
import { dropPhotoCopies, type Edited, followCopies, type Touched } from './copies.ts';
import { jobsDb } from './db.ts';
import { CardRefused, faultOf, type Refusal } from './fault.ts';
import { listedOf } from './listed.ts';
import { markChange } from './marks.ts';
import { dropPhotos, putPhoto } from './photos.ts';
import type { Read } from './read.ts';
import { type CardReader, cardReader } from './reader.ts';
import type { Change, JobsDb, JobsSchema, KeptClash, KeptPhoto } from './records.ts';
import { asOnlyWriter, tellTabs } from './tabs.ts';
import { withinTime } from './time-limit.ts';

export type Changed =
  | {
      readonly kind: 'saved';
      readonly card: JobCard;
      /** Another tab had changed the card meanwhile; both changes are in it, bar the clashes. */
      readonly merged: boolean;
      readonly clashes: readonly KeptClash[];
    }
  /** The reader would not take the card as it would become, so it stays as it was. */
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] }
  | Exclude<Read, { kind: 'card' }>;
export type CardEdit = (card: JobCard) => JobCard;

/** Forced onto the disk before it counts as saved. */
const STRICT = { durability: 'strict' } as const;
const ALL: StoreNames<JobsSchema>[] = ['cards', 'photos', 'summaries', 'removed', 'clashes', 'aside'];
const begin = (db: JobsDb): Change => db.transaction(ALL, 'readwrite', STRICT);

/** Takes a change back; false where it has ended by itself. */
const abortedNow = (change: Change): boolean => {
  try {
    change.abort();
    return true;
  } catch (ended) {
    if (ended instanceof DOMException && ended.name === 'InvalidStateError') return false;
    throw ended;
  }
};

/** Runs one change on a database that is open; all of it is on the disk when this resolves, or none. */
export const wholly = async <T>(db: JobsDb, work: (change: Change) => Promise<T>): Promise<T> => {
  const change = begin(db);
  // The transaction's own end is told by the error that ended it; unheard, it would be told twice.
  const done = change.done.then(
    () => undefined,
    (error: unknown) => ({ error }),
  );
  let result: T;
  try {
    result = await work(change);
  } catch (error) {
    const byUs = abortedNow(change);
    const failed = await done;
    throw byUs ? error : await causeOf(error, Promise.resolve(failed?.error));
  }
  const failed = await done;
  if (failed) throw failed.error;
  return result;
};

type Written<T> = { readonly db: JobsDb; readonly result: T };
const onDisk = async <T>(work: (change: Change) => Promise<T>): Promise<Written<T>> => {
  const db = await jobsDb();
  return { db, result: await wholly(db, work) };
};

/** As on the disk; where that is full, the second copies of photos make room first. */
const withRoom = async <T>(work: (change: Change) => Promise<T>): Promise<Written<T>> => {
  try {
    return await withinTime(onDisk(work));
  } catch (error) {
    if (refusalOf(error) !== 'full' || !(await dropPhotoCopies())) throw error;
    return withinTime(onDisk(work));
  }
};

/**
 * Runs one change as a whole: all of it is on the disk when this resolves, or none, and the second copies of what it
 * touches have followed, as far as this browser makes copies. Throws a `JobsFault`.
 */
export const write = <T>(
  /** What it touches, or what it has left behind. */
  touched: Touched | ((result: T) => Edited | undefined),
  work: (change: Change) => Promise<T>,
): Promise<T> =>
  asOnlyWriter(async () => {
    const { db, result } = await withRoom(work);
    const done = typeof touched === 'function' ? touched(result) : touched;
    if (done) await followCopies(db, done);
    return result;
  }).catch((error) => {
    throw faultOf(error);
  });

/**
 * The one door into the store: what the reader does not take is not written, and the whole change with it. Puts a card
 * in place with its line of the list; a card that is there is not taken away. Throws a `CardRefused`.
 */
export const putCard = async (change: Change, read: CardReader, card: JobCard): Promise<JobCard> => {
  const taken = read(card);
  if (!taken.ok) throw new CardRefused(read.refusals(card));
  const { value } = taken;
  await Promise.all([
    change.objectStore('removed').delete(value.id),
    change.objectStore('cards').put(value),
    change.objectStore('summaries').put(listedOf(value)),
  ]);
  return value;
};

/** What lies in the store under an id, as the reader has it. */
export const cardIn = async (change: Change, read: CardReader, id: string): Promise<Read> => {
  const raw = await change.objectStore('cards').get(id);
  if (raw === undefined) return { kind: 'gone' };
  const card = read(raw);
  return card.ok ? { kind: 'card', card: card.value } : { kind: 'unreadable', raw, faults: card.faults };
};

/** Later than both, so that a device whose clock went back still has the newest card on top. */
export const stamped = (card: JobCard, ...before: readonly number[]): JobCard => ({
  ...card,
  changedAt: Math.min(LATEST_INSTANT, Math.max(Date.now(), ...before.map((at) => at + 1))),
});

/** Keeps a new card, whose id nobody has. Throws a `JobsFault` or a `CardRefused`. */
export const addCard = async (card: JobCard): Promise<void> => {
  const read = await cardReader();
  await write({ cards: [card.id] }, async (change) => {
    await change.objectStore('cards').add(card);
    await putCard(change, read, card);
  });
  markChange(1);
  tellTabs([card.id]);
};

type Merged = { readonly card: JobCard; readonly merged: boolean; readonly clashes: readonly Clash[] };
/** How an edit came out, and all clashes of the card that are open after it. */
type Left = { readonly outcome: Changed; readonly clashes: readonly KeptClash[] };
const edit = async (
  id: string,
  by: (there: JobCard) => Merged,
  also: (change: Change) => Promise<unknown> = async () => undefined,
  photos: Touched['photos'] = [],
): Promise<Changed> => {
  const read = await cardReader();
  const left = ({ outcome, clashes }: Left): Edited | undefined =>
    outcome.kind === 'saved' ? { card: id, photos, standing: { raw: outcome.card, clashes } } : undefined;
  let outcome: Changed;
  try {
    ({ outcome } = await write(left, async (change): Promise<Left> => {
      const there = await cardIn(change, read, id);
      if (there.kind !== 'card') return { outcome: there, clashes: [] };
      const edited = by(there.card);
      const [card, clashes] = await Promise.all([
        putCard(change, read, edited.card),
        keepClashes(change, id, edited.clashes),
        also(change),
      ]);
      const saved: Changed = { kind: 'saved', card, merged: edited.merged, clashes };
      return { outcome: saved, clashes: await clashesIn(change, id) };
    }));
  } catch (error) {
    if (error instanceof CardRefused) return { kind: 'refused', refusals: error.refusals };
    throw error;
  }
  if (outcome.kind === 'saved') {
    markChange();
    tellTabs([id]);
  }
  return outcome;
};

/**
 * Changes the card that she sees. Where another tab has changed it since, her change is put onto the newer card; what
 * both touched stays as it is there, and both versions are kept as clashes until she chooses. Throws a `JobsFault`: then
 * nothing is changed.
 */
export const changeCard = (seen: JobCard, by: CardEdit): Promise<Changed> =>
  edit(seen.id, (there) => {
    const mine = by(seen);
    if (sameCard(there, seen))
      return { card: stamped(mine, there.changedAt, seen.changedAt), merged: false, clashes: [] };
    const { card, clashes } = mergeChange(seen, mine, there);
    return { card: stamped(card, there.changedAt, seen.changedAt), merged: true, clashes };
  });

/** Puts the edit onto whatever the card holds now; `merged` where that is not what she saw. */
const plainly =
  (by: CardEdit, seen?: JobCard) =>
  (there: JobCard): Merged => ({
    card: stamped(by(there), there.changedAt),
    merged: seen !== undefined && !sameCard(there, seen),
    clashes: [],
  });

/** Adds to a card whatever it holds now. Throws a `JobsFault`. */
export const addToCard = (id: string, by: CardEdit): Promise<Changed> => edit(id, plainly(by));

/** Ends a clash by her choice, with what it does to the card. */
export const settleClash = (
  clash: KeptClash,
  by: CardEdit = (card) => card,
  seen?: JobCard,
): Promise<Changed> =>
  edit(clash.card, plainly(by, seen), (change) => change.objectStore('clashes').delete(clash.id));

/** Keeps a photo and its entry on the card together. */
export const addPhoto = (photo: KeptPhoto, by: CardEdit, seen?: JobCard): Promise<Changed> =>
  edit(photo.card, plainly(by, seen), (change) => putPhoto(change, photo), [photo]);

/** Takes a photo away with its entry on the card. */
export const removePhoto = (card: string, photo: string, seen?: JobCard): Promise<Changed> =>
  edit(
    card,
    plainly((there) => withoutPhoto(there, photo, Date.now()), seen),
    (change) => dropPhotos(change, card, (id) => id === photo),
    [{ card, id: photo }],
  );

/** Puts cards with their photos in place, all or none; what can not be read is left as it lies there. */
export const putCards = async (cards: readonly JobCard[], photos: readonly KeptPhoto[]): Promise<void> => {
  const read = await cardReader();
  const ids = cards.map(({ id }) => id);
  const added = await write({ cards: ids, photos }, async (change) => {
    let fresh = 0;
    for (const card of cards) {
      const there = await cardIn(change, read, card.id);
      // A record that can not be read is not overwritten: it may be all that is left of her work.
      if (there.kind === 'unreadable') continue;
      if (there.kind === 'gone') fresh += 1;
      await putCard(change, read, card);
    }
    for (const photo of photos) await putPhoto(change, photo);
    return fresh;
  });
  markChange(added);
  tellTabs(ids);
};
