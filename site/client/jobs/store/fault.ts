import { refusalOf, type StorageRefusal } from '../../shared/storage-refusal.ts';

/** Why the cards can not be read or written just now. */
export type JobsTrouble = StorageRefusal | 'deleted' | 'blocked';

/** What is wrong, what is safe, what to do. */
export const TROUBLE_SAYS: Readonly<Record<JobsTrouble, string>> = {
  full: 'Not saved: the storage of this browser is full. What was saved before is safe. Save this card as a file, then make room: delete photos here, or files on the device.',
  denied:
    'This browser keeps nothing here: a private window, or storage is turned off. Open Halfdry in an ordinary window to keep cards. In this window a card lasts only until the page is closed, so save it as a file.',
  'newer-site':
    'Halfdry was renewed in another tab. Load this page again; the cards are safe. What stands in a field and was not shown as saved: copy it first.',
  deleted:
    'The storage of the cards was just deleted, in another tab or by the browser. What this page still shows can be saved as a file; do that first. Then load the page again: cards that have a second copy come back.',
  blocked:
    'Another tab with an older Halfdry holds the cards. Close that tab; this page then goes on by itself. Nothing is lost.',
  'cut-off': 'The browser cut this page off from its storage. It is tried again with your next change.',
  silent:
    'The storage of this browser does not answer, so nothing is shown as saved. Close other tabs of Halfdry and load this page again; where that does not help, close the browser and open it again. What was saved before stays where it is.',
  unknown:
    'Not saved: the browser could not write, and gives no reason that we know. What was saved before is safe. Save this card as a file and load the page again.',
};

/** An error of the store, sorted by what she can do about it. */
export class JobsFault extends Error {
  readonly trouble: JobsTrouble;

  constructor(trouble: JobsTrouble, cause?: unknown) {
    super(TROUBLE_SAYS[trouble], { cause });
    this.name = 'JobsFault';
    this.trouble = trouble;
  }
}

/** What of a card would not be read back: the field by its name on the card, and a sentence to stand beside it. */
export type Refusal = { readonly field: string; readonly says: string };

/** A card that its own reader would not take, so it was not written; what was there is kept. */
export class CardRefused extends Error {
  readonly refusals: readonly Refusal[];

  constructor(refusals: readonly Refusal[]) {
    super(`Not saved; the card is as it was. ${[...new Set(refusals.map(({ says }) => says))].join(' ')}`);
    this.name = 'CardRefused';
    this.refusals = refusals;
  }
}

/**
 * What the browser's storage refused, as a `JobsFault`. Anything else, a bug or a fetch that failed, comes back as it is:
 * it is no word about what was saved.
 */
export const faultOf = (error: unknown): unknown => {
  const refusal = refusalOf(error);
  return refusal ? new JobsFault(refusal, error) : error;
};

/** An error while opening: a store that can not even be opened, whatever the browser refuses it by, is closed to us. */
export const openFaultOf = (error: unknown): unknown => {
  const fault = faultOf(error);
  return fault instanceof JobsFault && (fault.trouble === 'unknown' || fault.trouble === 'cut-off')
    ? new JobsFault('denied', error)
    : fault;
};
