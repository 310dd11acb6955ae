/**
 * Why a browser keeps nothing, or does not give back what it keeps: `full`; `denied`, as in a private window;
 * `newer-site`, where another tab has renewed the store; `cut-off`, where the store was closed under this page; `silent`;
 * `unknown`, where it gives no reason that she could do anything about.
 */
export type StorageRefusal = 'full' | 'denied' | 'newer-site' | 'cut-off' | 'silent' | 'unknown';

/** By the names of the standards for databases and caches, and those of Gecko for its own errors (from memory). */
const BY_NAME: Readonly<Record<string, StorageRefusal>> = {
  QuotaExceededError: 'full',
  NS_ERROR_FILE_NO_DEVICE_SPACE: 'full',
  SecurityError: 'denied',
  NotAllowedError: 'denied',
  VersionError: 'newer-site',
  InvalidStateError: 'cut-off',
  TimeoutError: 'silent',
  // The browser ended a transaction by itself, could not read its own files, or says no more.
  AbortError: 'unknown',
  NotReadableError: 'unknown',
  UnknownError: 'unknown',
  OperationError: 'unknown',
};
/** Damaged files of Gecko. */
const OWN_FAULT = /^NS_ERROR_(FILE|STORAGE|CORRUPTED)/;
/**
 * A record whose file is gone, as Chromium says it (https://github.com/w3c/IndexedDB/issues/423): under names that our
 * own slips have too, so the words decide.
 */
const RECORD_LOST = /large IndexedDB value|data lost/i;

/**
 * What a browser refuses by an error of its storage. Nothing where the error is no word of the browser's about what it
 * keeps: a key that is none, a value that can not be copied, a transaction that was over are bugs of ours, and are thrown
 * on.
 */
export const refusalOf = (error: unknown): StorageRefusal | undefined => {
  if (!(error instanceof DOMException)) return undefined;
  if (Object.hasOwn(BY_NAME, error.name)) return BY_NAME[error.name];
  return OWN_FAULT.test(error.name) || RECORD_LOST.test(error.message) ? 'unknown' : undefined;
};

/**
 * Why work on a transaction failed: where the browser had ended the transaction before, what it ended it by; what the
 * work then ran into, such as a transaction that is over, only looks like a bug of ours.
 */
export const causeOf = async (error: unknown, ended: Promise<unknown>): Promise<unknown> => {
  const over = error instanceof DOMException && OVER.has(error.name);
  return (over && (await ended)) || error;
};
const OVER: ReadonlySet<string> = new Set(['TransactionInactiveError', 'InvalidStateError', 'AbortError']);
