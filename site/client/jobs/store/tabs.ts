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

/** One writer at a time over all tabs. Older browsers have no locks: there the compared card alone guards. */
export const asOnlyWriter = <T>(write: () => Promise<T>): Promise<T> =>
  typeof navigator !== 'undefined' && navigator.locks
    ? (navigator.locks.request(NAME, write) as Promise<T>)
    : write();
