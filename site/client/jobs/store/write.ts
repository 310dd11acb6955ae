import { withoutPhoto } from '#engine/jobs/card.ts';
import { cardsRemoved } from '#engine/jobs/removed.ts';
import type { JobCard, RemovedCard } from '#engine/model/job-card.ts';
import { type JobsDb, jobsDb, type KeptPhoto } from './db.ts';
import { faultOf } from './fault.ts';
import { listedOf } from './listed.ts';
import { markChange } from './marks.ts';
import { type Clash, mergeChange } from './merge.ts';
import { cardReader, type Read } from './read.ts';
import { asOnlyWriter, tellTabs } from './tabs.ts';

export type Changed =
  | {
      readonly kind: 'saved';
      readonly card: JobCard;
      /** Another tab had changed the card meanwhile; both changes are in it, bar the clashes. */
      readonly merged: boolean;
      readonly clashes: readonly Clash[];
    }
  | Exclude<Read, { kind: 'card' }>;
type Edit = (card: JobCard) => JobCard;

/** Forced onto the disk before it counts as saved. */
const STRICT = { durability: 'strict' } as const;
const ALL = ['cards', 'photos', 'summaries', 'removed'] as const;

/** Runs one change as a whole: all of it is on the disk when this resolves, or none. Throws a `JobsFault`. */
export const write = <T>(work: (change: ReturnType<typeof begin>) => Promise<T>): Promise<T> =>
  asOnlyWriter(async () => {
    try {
      const change = begin(await jobsDb());
      let result: T;
      try {
        result = await work(change);
      } catch (error) {
        // The transaction's own end is told by this error; unheard, it would be told twice.
        change.done.catch(() => undefined);
        try {
          change.abort();
        } catch {
          // It has ended already.
        }
        throw error;
      }
      await change.done;
      return result;
    } catch (error) {
      throw faultOf(error);
    }
  });
const begin = (db: JobsDb) => db.transaction(ALL, 'readwrite', STRICT);
export type Change = ReturnType<typeof begin>;

/** Puts a card in place with its line of the list. A card that is there is not taken away. */
export const put = async (change: Change, card: JobCard): Promise<void> => {
  await Promise.all([
    change.objectStore('removed').delete(card.id),
    change.objectStore('cards').put(card),
    change.objectStore('summaries').put(listedOf(card.id, card)),
  ]);
};

/** Later than both, so that a device whose clock went back still has the newest card on top. */
const stamped = (card: JobCard, ...before: readonly number[]): JobCard => ({
  ...card,
  changedAt: Math.max(Date.now(), ...before.map((at) => at + 1)),
});

/** Keeps a new card. Throws a `JobsFault`, also where its id is taken. */
export const addCard = async (card: JobCard): Promise<void> => {
  await write(async (change) => {
    await change.objectStore('cards').add(card);
    await put(change, card);
  });
  markChange(1);
  tellTabs([card.id]);
};

type Made = { readonly card: JobCard; readonly merged: boolean; readonly clashes: readonly Clash[] };
const edit = async (
  id: string,
  by: (there: JobCard) => Made,
  also: (change: Change) => Promise<unknown> = async () => undefined,
): Promise<Changed> => {
  const read = await cardReader();
  const outcome = await write(async (change): Promise<Changed> => {
    const raw: unknown = await change.objectStore('cards').get(id);
    const there = raw === undefined ? undefined : read(raw);
    if (!there) return raw === undefined ? { kind: 'gone' } : { kind: 'unreadable', raw };
    const made = by(there);
    await Promise.all([put(change, made.card), also(change)]);
    return { kind: 'saved', ...made };
  });
  if (outcome.kind === 'saved') {
    markChange();
    tellTabs([id]);
  }
  return outcome;
};

/**
 * Changes the card that she sees. Where another tab has changed it since, her change is put onto the newer card;
 * what both touched stays as it is there and comes back as clashes. Throws a `JobsFault`: then nothing is changed.
 */
export const changeCard = (seen: JobCard, by: Edit): Promise<Changed> =>
  edit(seen.id, (there) => {
    const mine = by(seen);
    if (there.changedAt === seen.changedAt)
      return { card: stamped(mine, seen.changedAt), merged: false, clashes: [] };
    const { card, clashes } = mergeChange(seen, mine, there);
    return { card: stamped(card, there.changedAt, seen.changedAt), merged: true, clashes };
  });

/** Puts the edit onto whatever the card holds now. */
const plainly =
  (by: Edit) =>
  (there: JobCard): Made => ({ card: stamped(by(there), there.changedAt), merged: false, clashes: [] });

/** Adds to a card whatever it holds now. Throws a `JobsFault`. */
export const addToCard = (id: string, by: Edit): Promise<Changed> => edit(id, plainly(by));

export type Removed = { readonly card: JobCard; readonly photos: readonly KeptPhoto[] };

/** Takes a card with its photos out of the store. */
export const takeOut = async (change: Change, id: string): Promise<Removed | undefined> => {
  const card = await change.objectStore('cards').get(id);
  const photos = await change.objectStore('photos').index('card').getAll(id);
  await Promise.all([
    change.objectStore('cards').delete(id),
    change.objectStore('summaries').delete(id),
    ...photos.map((photo) => change.objectStore('photos').delete(photo.id)),
  ]);
  return card && { card, photos };
};

/** Notes which cards are taken away, in place of what was noted: so many as are remembered. */
export const keepRemoved = async (change: Change, removed: readonly RemovedCard[]): Promise<void> => {
  const store = change.objectStore('removed');
  await store.clear();
  await Promise.all(cardsRemoved(removed).map((one) => store.put(one)));
};

/** As a name for what can not be read. */
const nameOf = ({ id, name }: JobCard): string => (typeof name === 'string' ? name.slice(0, 80) : id);
const changedOf = ({ changedAt }: JobCard): number => (Number.isSafeInteger(changedAt) ? changedAt : 0);

/** Takes a card and its photos away, notes when, and hands them back, so that it can be undone. */
export const removeCard = async (id: string): Promise<Removed | undefined> => {
  const removed = await write(async (change) => {
    const out = await takeOut(change, id);
    const known = await change.objectStore('removed').getAll();
    if (out) {
      const at = Math.max(Date.now(), changedOf(out.card) + 1);
      await keepRemoved(change, [{ id, name: nameOf(out.card), at }, ...known]);
    }
    return out;
  });
  if (removed) markChange(-1);
  tellTabs([id]);
  return removed;
};

/** Puts cards with their photos in place, all or none. `merge` makes of each and what lies there the card to keep. */
export const putCards = async (
  cards: readonly JobCard[],
  photos: readonly KeptPhoto[],
  merge: (there: JobCard, card: JobCard) => JobCard = (_there, card) => card,
): Promise<void> => {
  const read = await cardReader();
  const added = await write(async (change) => {
    let fresh = 0;
    for (const card of cards) {
      const raw: unknown = await change.objectStore('cards').get(card.id);
      const there = raw === undefined ? undefined : read(raw);
      // A record that can not be read is not overwritten: it may be all that is left of her work.
      if (raw !== undefined && !there) continue;
      if (!there) fresh += 1;
      await put(change, there ? merge(there, card) : card);
    }
    for (const photo of photos) await change.objectStore('photos').put(photo);
    return fresh;
  });
  markChange(added);
  tellTabs(cards.map(({ id }) => id));
};

/** Keeps a photo and its entry on the card together. */
export const addPhoto = (photo: KeptPhoto, by: Edit): Promise<Changed> =>
  edit(photo.card, plainly(by), (change) => change.objectStore('photos').put(photo));

/** Takes a photo away with its entry on the card. */
export const removePhoto = (card: string, photo: string): Promise<Changed> =>
  edit(
    card,
    plainly((there) => withoutPhoto(there, photo, Date.now())),
    (change) => change.objectStore('photos').delete(photo),
  );
