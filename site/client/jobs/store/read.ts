import type { JobCard, RemovedCard } from '#engine/model/job-card.ts';
import { type JobsDb, jobsDb, type KeptPhoto } from './db.ts';
import { faultOf } from './fault.ts';
import type { Listed } from './listed.ts';
import { markCards } from './marks.ts';

export type Read =
  | { readonly kind: 'card'; readonly card: JobCard }
  /** What lies there is no card: it is left as it is and can be saved as a file. */
  | { readonly kind: 'unreadable'; readonly raw: unknown }
  | { readonly kind: 'gone' };
/** The schema library is heavy, so it comes only when a card is opened. */
export const cardReader = async (): Promise<(raw: unknown) => JobCard | undefined> => {
  const { readCard } = await import('./schema.ts');
  return (raw) => {
    const read = readCard(raw);
    return read.ok ? read.value : undefined;
  };
};

/** The list of cards, last changed first: how many there are, the first of them, and in time all. */
export type CardList = {
  readonly count: number;
  readonly first: readonly Listed[];
  readonly all: () => Promise<readonly Listed[]>;
};

/** So many of a list are read at once; more than a screen holds. */
const FIRST = 40;

/** The first of the list, without the rest; nothing where the list does not stand for the cards. */
const readFirst = async (db: JobsDb): Promise<Omit<CardList, 'all'> | undefined> => {
  try {
    const reading = db.transaction(['cards', 'summaries'], 'readonly');
    const summaries = reading.objectStore('summaries');
    const [first, count, cards, ordered] = await Promise.all([
      summaries.index('order').getAll(null, FIRST),
      summaries.count(),
      reading.objectStore('cards').count(),
      summaries.index('order').count(),
    ]);
    return count === cards && ordered === cards ? { count, first } : undefined;
  } catch {
    // One record that can not be read fails them all: they are read one by one.
    return undefined;
  }
};

/** The cards of this browser. Throws a `JobsFault` where the store can not be opened. */
export const listCards = async (): Promise<CardList> => {
  const db = await jobsDb();
  const mend = async () => (await import('./mend.ts')).mendList();
  const read = await readFirst(db);
  if (read) return { ...read, all: () => db.getAllFromIndex('summaries', 'order').catch(mend) };
  const list = await mend();
  return { count: list.length, first: list.slice(0, FIRST), all: async () => list };
};

export const readOne = async (id: string): Promise<Read> => {
  const [db, read] = await Promise.all([jobsDb(), cardReader()]);
  let raw: unknown;
  try {
    raw = await db.get('cards', id);
  } catch (error) {
    return { kind: 'unreadable', raw: { id, error: String(error) } };
  }
  if (raw === undefined) return { kind: 'gone' };
  const card = read(raw);
  return card ? { kind: 'card', card } : { kind: 'unreadable', raw };
};

export const readPhotos = async (card: string): Promise<readonly KeptPhoto[]> => {
  try {
    return await (await jobsDb()).getAllFromIndex('photos', 'card', card);
  } catch (error) {
    throw faultOf(error);
  }
};

/** Which cards were taken away here, and when. */
export const readRemoved = async (): Promise<readonly RemovedCard[]> => {
  try {
    return await (await jobsDb()).getAll('removed');
  } catch (error) {
    throw faultOf(error);
  }
};

/** Every record as it lies there, readable or not, for an export. */
export const readRaw = async (): Promise<readonly unknown[]> => {
  const db = await jobsDb();
  try {
    return await db.getAll('cards');
  } catch {
    const ids = await db.getAllKeys('cards');
    return Promise.all(ids.map((id) => db.get('cards', id).catch(() => ({ id }))));
  }
};

/** How many cards there are now, noted beside them so that a cleared store is noticed. */
export const countCards = async (): Promise<number> => {
  const cards = await (await jobsDb()).count('cards');
  markCards(cards);
  return cards;
};
