const NAME = 'halfdry.jobs';

let channel: BroadcastChannel | undefined;
const open = (): BroadcastChannel | undefined => {
  if (typeof BroadcastChannel === 'undefined') return undefined;
  channel ??= new BroadcastChannel(NAME);
  return channel;
};

/** Tells the other tabs which cards have changed, once they are surely written. */
export const tellTabs = (ids: readonly string[]): void => open()?.postMessage(ids);

/** Calls back when another tab has changed cards. */
export const onOtherTabs = (listener: (ids: readonly string[]) => void, signal: AbortSignal): void =>
  open()?.addEventListener(
    'message',
    ({ data }) => {
      if (Array.isArray(data)) listener(data.filter((id) => typeof id === 'string'));
    },
    { signal },
  );

/** Milliseconds that another tab may hold the lock. Longer than it may take to write and copy, so that it gives up first. */
const LOCK_LIMIT = 45_000;
/** Held by the one that looks whether the store has lost something. It may begin while a writer opens the store. */
const WHOLE = `${NAME}.whole`;

/** One writer at a time over all tabs. Older browsers have no locks: there the compared card alone guards. */
export const asOnlyWriter = <T>(work: () => Promise<T>): Promise<T> => alone(NAME, work);

/** One at a time that puts back what the store has lost. */
export const asOnlyMender = <T>(work: () => Promise<T>): Promise<T> => alone(WHOLE, work);

const alone = async <T>(name: string, work: () => Promise<T>): Promise<T> =>
  typeof navigator !== 'undefined' && navigator.locks
    ? await navigator.locks.request(name, { signal: AbortSignal.timeout(LOCK_LIMIT) }, work)
    : work();
