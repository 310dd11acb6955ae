import { openDB } from 'idb';
import { idle } from '../../shared/idle.ts';
import { canCopy } from '../../shared/second-copy.ts';
import { refusalOf } from '../../shared/storage-refusal.ts';
import { JobsFault, type JobsTrouble, openFaultOf } from './fault.ts';
import type { JobsDb, JobsSchema } from './records.ts';
import { withinTime } from './time-limit.ts';

const JOBS_DB = 'halfdry';
export const JOBS_DB_VERSION = 4;

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
  // What two tabs changed at once, until she has chosen; and cards that can not be read and are out of the way.
  (db) => {
    db.createObjectStore('clashes', { keyPath: 'id' }).createIndex('card', 'card');
    db.createObjectStore('aside', { keyPath: 'id' });
  },
];

type Heard = (trouble: JobsTrouble | undefined) => void;
const listeners = new Set<Heard>();
/** Told when something stands between this page and its store, and, with nothing, when that is over. */
export const onJobsTrouble = (listener: Heard, signal: AbortSignal): void => {
  listeners.add(listener);
  signal.addEventListener('abort', () => listeners.delete(listener));
};
const tell: Heard = (trouble) => {
  for (const listener of listeners) listener(trouble);
};

let opened: Promise<JobsDb> | undefined;

const open = async (): Promise<JobsDb> => {
  // Some browsers have none in a private window, others a name without a store behind it.
  if (!globalThis.indexedDB) throw new JobsFault('denied');
  let held = false;
  // A browser that keeps nothing throws here at once, or answers with an error.
  const opening: Promise<JobsDb> = Promise.resolve().then(() =>
    openDB<JobsSchema>(JOBS_DB, JOBS_DB_VERSION, {
      // All or nothing: where a step throws, the older version stays as it was, and opening fails.
      upgrade(db, from) {
        for (const step of STEPS.slice(from)) step(db);
      },
      blocked: () => {
        held = true;
        tell('blocked');
      },
      blocking: (_from, to) => {
        void opening.then((db) => db.close());
        opened = undefined;
        tell(to === null ? 'deleted' : 'newer-site');
      },
      terminated: () => {
        opened = undefined;
        tell('cut-off');
      },
    }),
  );
  try {
    return await withinTime(opening);
  } catch (error) {
    // A page that waits for another to be closed waits as long as it takes.
    if (held && error instanceof JobsFault) return await opening;
    opening.then(
      (late) => late.close(),
      () => undefined,
    );
    throw openFaultOf(error);
  } finally {
    if (held) tell(undefined);
  }
};

/** What goes on beside the store is told where it ends in a bug, and is no reason to keep her from her cards. */
const asFarAsCan = async (work: () => Promise<unknown>): Promise<void> => {
  try {
    await work();
  } catch (error) {
    if (!(error instanceof JobsFault || refusalOf(error))) reportError(error);
  }
};

/** The store with all that it had: what the browser has lost of it is put back from the second copies. */
const openWhole = async (): Promise<JobsDb> => {
  const db = await open();
  if (!canCopy()) return db;
  await asFarAsCan(async () => {
    if (await isEmpty(db)) await (await import('./whole.ts')).fillEmpty(db);
  });
  void idle().then(() => asFarAsCan(async () => (await import('./whole.ts')).compareCopies(db)));
  return db;
};

/** The store of this browser. Throws a `JobsFault`; a failed opening is tried again at the next call. */
export const jobsDb = (): Promise<JobsDb> => {
  opened ??= openWhole().catch((error) => {
    opened = undefined;
    throw error;
  });
  return opened;
};

/** A store without a trace: where copies stand beside it, the browser has lost it. */
export const isEmpty = async (db: JobsDb): Promise<boolean> => {
  const change = db.transaction(['cards', 'aside', 'removed'], 'readonly');
  const counts = await Promise.all(
    (['cards', 'aside', 'removed'] as const).map((name) => change.objectStore(name).count()),
  );
  return counts.every((count) => count === 0);
};

/** Lets the store go, as a page does that is closed. */
export const closeJobsDb = async (): Promise<void> => {
  const db = await opened?.catch(() => undefined);
  opened = undefined;
  db?.close();
};
