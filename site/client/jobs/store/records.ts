/** What lies in the store, a type a record, and the store itself. Nothing here runs. */
import type { DBSchema, IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import type { Clash } from '#engine/jobs/three-way.ts';
import type { RemovedCard } from '#engine/model/job-card.ts';
import type { Listed } from './listed.ts';

/** A photo as it is kept: bytes, not a file of the browser's, so that it is written with its card or not at all. */
export type KeptPhoto = {
  readonly id: string;
  readonly card: string;
  readonly type: string;
  readonly bytes: ArrayBuffer;
};

/**
 * As it lies in the store, where its id holds its card's too: a photo of another card that has the same id is another
 * record. Photos of the first versions lie by their own id alone. They are read as they are: to copy all pictures into
 * new records would need twice their room at once, on phones that have none.
 */
export type PhotoRecord = KeptPhoto;

/** Both versions of what two tabs changed at once, kept with the card until she has chosen. */
export type KeptClash = Clash & { readonly id: string; readonly card: string; readonly at: number };

/** A card that was taken out of the store, readable or not, with all that belongs to it. */
export type Removed = {
  readonly id: string;
  readonly name: string;
  readonly raw: unknown;
  readonly photos: readonly KeptPhoto[];
  readonly clashes: readonly KeptClash[];
};

/** A record that could not be read, out of the way of the list: exactly as it was found, with its photos. */
export type SetAside = Removed & { readonly at: number };

export interface JobsSchema extends DBSchema {
  /** Not trusted before the reader has read it. */
  cards: { key: string; value: unknown };
  photos: { key: string; value: PhotoRecord; indexes: { card: string } };
  summaries: { key: string; value: Listed; indexes: { order: number } };
  removed: { key: string; value: RemovedCard };
  clashes: { key: string; value: KeptClash; indexes: { card: string } };
  aside: { key: string; value: SetAside };
}
export type JobsDb = IDBPDatabase<JobsSchema>;

/** One change of the whole store: all of it is kept, or none. */
export type Change = IDBPTransaction<JobsSchema, StoreNames<JobsSchema>[], 'readwrite'>;
