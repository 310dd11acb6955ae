import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { JobCard, RemovedCard } from '#engine/model/job-card.ts';
import { JobsFault, type JobsTrouble, openFaultOf } from './fault.ts';
import type { Listed } from './listed.ts';

/** A photo as it is kept: bytes, not a file of the browser's, so that it is written with its card or not at all. */
export type KeptPhoto = {
  readonly id: string;
  readonly card: string;
  readonly type: string;
  readonly bytes: ArrayBuffer;
};

interface JobsSchema extends DBSchema {
  cards: { key: string; value: JobCard };
  photos: { key: string; value: KeptPhoto; indexes: { card: string } };
  summaries: { key: string; value: Listed; indexes: { order: number } };
  removed: { key: string; value: RemovedCard };
}
export type JobsDb = IDBPDatabase<JobsSchema>;

const JOBS_DB = 'halfdry';
export const JOBS_DB_VERSION = 3;

/** Each step leads from one version to the next; none is ever changed once it was published. */
const STEPS: readonly ((db: JobsDb) => void)[] = [
  (db) => {
    db.createObjectStore('cards', { keyPath: 'id' });
    db.createObjectStore('photos', { keyPath: 'id' }).createIndex('card', 'card');
  },
  // The list reads these: whole cards would take too long on a phone. It is filled when it is first read.
  (db) => {
    db.createObjectStore('summaries', { keyPath: 'id' }).createIndex('order', 'order');
  },
  // Which cards were taken away and when, so that an older file does not bring them back.
  (db) => {
    db.createObjectStore('removed', { keyPath: 'id' });
  },
];

const listeners = new Set<(trouble: JobsTrouble) => void>();
/** Told when something stands between this page and its store. */
export const onJobsTrouble = (listener: (trouble: JobsTrouble) => void, signal: AbortSignal): void => {
  listeners.add(listener);
  signal.addEventListener('abort', () => listeners.delete(listener));
};
const tell = (trouble: JobsTrouble): void => {
  for (const listener of listeners) listener(trouble);
};

let opened: Promise<JobsDb> | undefined;

const open = async (): Promise<JobsDb> => {
  if (!('indexedDB' in globalThis)) throw new JobsFault('denied');
  try {
    return await openDB<JobsSchema>(JOBS_DB, JOBS_DB_VERSION, {
      // All or nothing: where a step throws, the older version stays as it was, and opening fails.
      upgrade(db, from) {
        for (const step of STEPS.slice(from)) step(db);
      },
      blocked: () => tell('blocked'),
      blocking: (_from, _to, event) => {
        (event.target as IDBDatabase).close();
        opened = undefined;
        tell('newer-site');
      },
      terminated: () => {
        opened = undefined;
        tell('cut-off');
      },
    });
  } catch (error) {
    throw openFaultOf(error);
  }
};

/** The store of this browser. Throws a `JobsFault`; a failed opening is tried again at the next call. */
export const jobsDb = (): Promise<JobsDb> => {
  opened ??= open().catch((error) => {
    opened = undefined;
    throw error;
  });
  return opened;
};

/** Lets the store go, as a page does that is closed. */
export const closeJobsDb = async (): Promise<void> => {
  const db = await opened?.catch(() => undefined);
  opened = undefined;
  db?.close();
};
