import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { CLOCK_DB } from './key.ts';

interface ClockSchema extends DBSchema {
  /**
   * `now` holds the coats on the clock; `aside`, what could not be read; `written`, when both were written last, later each
   * time. None is trusted before it is read.
   */
  clock: { key: 'now' | 'aside' | 'written'; value: unknown };
}
export type ClockDb = IDBPDatabase<ClockSchema>;

let opened: Promise<ClockDb> | undefined;

/** The database of the clock. Fails with a `DOMException` where the browser keeps nothing; tried again at the next call. */
export const clockDb = (): Promise<ClockDb> => {
  opened ??= openDB<ClockSchema>(CLOCK_DB, 1, {
    upgrade: (db) => void db.createObjectStore('clock'),
    blocking: (_from, _to, event) => {
      if (event.target instanceof IDBDatabase) event.target.close();
      opened = undefined;
    },
    terminated: () => {
      opened = undefined;
    },
  }).catch((error: unknown) => {
    opened = undefined;
    throw error;
  });
  return opened;
};

/** Lets the database go, as a page does that is closed. */
export const closeClockDb = async (): Promise<void> => {
  const db = await opened?.catch(() => undefined);
  opened = undefined;
  db?.close();
};
