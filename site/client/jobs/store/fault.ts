/** Why the cards can not be read or written just now. */
export type JobsTrouble = 'full' | 'denied' | 'newer-site' | 'blocked' | 'cut-off' | 'unknown';

/** What is wrong, what is safe, what to do. */
export const TROUBLE_SAYS: Readonly<Record<JobsTrouble, string>> = {
  full: 'Not saved: the storage of this browser is full. What was saved before is safe. Save this card as a file, then make room: delete photos here, or files on the device.',
  denied:
    'This browser keeps nothing here: a private window, or storage is turned off. Open Halfdry in an ordinary window to keep cards. In this window a card lasts only until the page is closed, so save it as a file.',
  'newer-site':
    'Halfdry was renewed in another tab. Load this page again; the cards are safe. What stands in a field and was not shown as saved: copy it first.',
  blocked:
    'Another tab with an older Halfdry holds the cards. Close that tab; this page then goes on by itself. Nothing is lost.',
  'cut-off': 'The browser cut this page off from its storage. It is tried again with your next change.',
  unknown:
    'Not saved: the browser could not write, and gives no reason that we know. What was saved before is safe. Save this card as a file and load the page again.',
};

const KINDS: Readonly<Record<string, JobsTrouble>> = {
  QuotaExceededError: 'full',
  SecurityError: 'denied',
  NotAllowedError: 'denied',
  VersionError: 'newer-site',
  InvalidStateError: 'cut-off',
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

const nameOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';

export const faultOf = (error: unknown): JobsFault =>
  error instanceof JobsFault ? error : new JobsFault(KINDS[nameOf(error)] ?? 'unknown', error);

/** An error while opening: where the store can not even be opened, it is closed to us. */
export const openFaultOf = (error: unknown): JobsFault => {
  const fault = faultOf(error);
  return fault.trouble === 'unknown' || fault.trouble === 'cut-off' ? new JobsFault('denied', error) : fault;
};
