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

/** Milliseconds that another tab may hold the lock. Longer than it may take to write, so that it gives up first. */
const LOCK_LIMIT = 20_000;

/** One writer at a time over all tabs. Older browsers have no locks: there the compared card alone guards. */
export const asOnlyWriter = async <T>(work: () => Promise<T>): Promise<T> =>
  typeof navigator !== 'undefined' && navigator.locks
    ? await navigator.locks.request(NAME, { signal: AbortSignal.timeout(LOCK_LIMIT) }, work)
    : work();
