/** What a browser refuses is told from a bug of ours by the names of https://webidl.spec.whatwg.org/#idl-DOMException-error-names. */
import { expect, it } from 'vitest';
import { causeOf, refusalOf } from '../../../site/client/shared/storage-refusal.ts';

it.each([
  ['QuotaExceededError', 'full'],
  ['SecurityError', 'denied'],
  ['NotAllowedError', 'denied'],
  ['VersionError', 'newer-site'],
  ['InvalidStateError', 'cut-off'],
  ['TimeoutError', 'silent'],
  ['AbortError', 'unknown'],
  ['NotReadableError', 'unknown'],
  ['UnknownError', 'unknown'],
  ['NS_ERROR_FILE_NO_DEVICE_SPACE', 'full'],
  ['NS_ERROR_FILE_CORRUPTED', 'unknown'],
])('takes a %s for what the browser refuses', (name, refusal) => {
  expect(refusalOf(new DOMException('', name))).toBe(refusal);
});

it.each([
  'DataCloneError',
  'DataError',
  'ConstraintError',
  'TransactionInactiveError',
  'ReadOnlyError',
  'NotFoundError',
  'InvalidAccessError',
  'SyntaxError',
  'constructor',
])('takes a %s for a bug of ours', (name) => {
  expect(refusalOf(new DOMException('', name))).toBeUndefined();
});

it('takes no error that is none of the browser for a refusal', () => {
  for (const error of [new TypeError('undefined'), new Error('QuotaExceededError'), 'full', undefined])
    expect(refusalOf(error)).toBeUndefined();
});

// The words and names of Chromium: https://github.com/w3c/IndexedDB/issues/423 and /dexie/Dexie.js/issues/1309.
it.each(['DataError', 'NotFoundError'])('knows a record whose file is gone, told as a %s', (name) => {
  expect(refusalOf(new DOMException('Failed to read large IndexedDB value', name))).toBe('unknown');
});

it('finds what ended a transaction behind what the work on it ran into, and nothing behind a bug', async () => {
  const full = new DOMException('', 'QuotaExceededError');
  const over = new DOMException('', 'TransactionInactiveError');
  const bug = new TypeError('undefined');
  expect(await causeOf(over, Promise.resolve(full))).toBe(full);
  expect(await causeOf(over, Promise.resolve(undefined))).toBe(over);
  expect(await causeOf(bug, Promise.resolve(full))).toBe(bug);
});
