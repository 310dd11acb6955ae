import type { CardFault } from '#engine/jobs.ts';
import type { JobCard, RemovedCard } from '#engine/model/job-card.ts';
import { refusalOf } from '../../shared/storage-refusal.ts';
import { jobsDb } from './db.ts';
import { faultOf, JobsFault } from './fault.ts';
import type { Listed } from './listed.ts';
import { markCards } from './marks.ts';
import { photosIn } from './photos.ts';
import { cardReader } from './reader.ts';
import type { JobsDb, KeptPhoto } from './records.ts';
import { withinTime } from './time-limit.ts';

export type Read =
  | { readonly kind: 'card'; readonly card: JobCard }
  /** What lies there is no card: it is left as it is and can be saved as a file, mended, or set aside. */
  | { readonly kind: 'unreadable'; readonly raw: unknown; readonly faults: readonly CardFault[] }
  | { readonly kind: 'gone' };

/** The list of cards, last changed first: how many there are, the first of them, and in time all. */
export type CardList = {
  readonly count: number;
  readonly first: readonly Listed[];
  readonly all: () => Promise<readonly Listed[]>;
};

/** So many of a list are read at once; more than a screen holds. */
const FIRST = 40;

/** Reads within the time that a store may take. Throws a `JobsFault`. */
const reading = async <T>(work: (db: JobsDb) => Promise<T>): Promise<T> => {
  const db = await jobsDb();
  try {
    return await withinTime(work(db));
  } catch (error) {
    throw faultOf(error);
  }
};

/** One record that can not be read fails all that are read with it: then they are read one by one. */
const isDamage = (error: unknown): boolean =>
  (error instanceof JobsFault ? error.trouble : refusalOf(error)) === 'unknown';

/** The first of the list, without the rest; nothing where the list does not stand for the cards. */
const readFirst = (db: JobsDb): Promise<Omit<CardList, 'all'> | undefined> => {
  const transaction = db.transaction(['cards', 'summaries'], 'readonly');
  const summaries = transaction.objectStore('summaries');
  return Promise.all([
    summaries.index('order').getAll(null, FIRST),
    summaries.count(),
    transaction.objectStore('cards').count(),
    summaries.index('order').count(),
  ]).then(
    ([first, count, cards, ordered]) => (count === cards && ordered === cards ? { count, first } : undefined),
    (error) => {
      if (isDamage(error)) return undefined;
      throw error;
    },
  );
};

/** The cards of this browser. Throws a `JobsFault` where the store can not be opened. */
export const listCards = async (): Promise<CardList> => {
  const rebuild = async () => (await import('./rebuild-list.ts')).rebuildList();
  const first = await reading(readFirst);
  if (!first) {
    const list = await rebuild();
    return { count: list.length, first: list.slice(0, FIRST), all: async () => list };
  }
  const all = () =>
    reading((db) => db.getAllFromIndex('summaries', 'order')).catch((error) => {
      if (isDamage(error)) return rebuild();
      throw error;
    });
  return { ...first, all };
};

export const readOne = async (id: string): Promise<Read> => {
  const read = await cardReader();
  let raw: unknown;
  try {
    raw = await reading((db) => db.get('cards', id));
  } catch (error) {
    if (isDamage(error)) return { kind: 'unreadable', raw: { id, error: String(error) }, faults: [] };
    throw error;
  }
  if (raw === undefined) return { kind: 'gone' };
  const card = read(raw);
  return card.ok ? { kind: 'card', card: card.value } : { kind: 'unreadable', raw, faults: card.faults };
};

export const readPhotos = async (card: string): Promise<readonly KeptPhoto[]> =>
  photosIn(await reading((db) => db.getAllFromIndex('photos', 'card', card)));

/** Which cards were taken away here, and when. */
export const readRemoved = (): Promise<readonly RemovedCard[]> => reading((db) => db.getAll('removed'));

/** Every record as it lies there, readable or not, for an export. */
export const readRaw = async (): Promise<readonly unknown[]> => {
  try {
    return await reading((db) => db.getAll('cards'));
  } catch (error) {
    if (!isDamage(error)) throw error;
    const ids = await reading((db) => db.getAllKeys('cards'));
    return Promise.all(ids.map(readRecord));
  }
};

const readRecord = async (id: string): Promise<unknown> => {
  const read = await readOne(id);
  return read.kind === 'card' ? read.card : read.kind === 'unreadable' ? read.raw : { id };
};

/** How many cards there are now, noted beside them so that a cleared store is noticed. */
export const countCards = async (): Promise<number> => {
  const cards = await reading((db) => db.count('cards'));
  markCards(cards);
  return cards;
};
