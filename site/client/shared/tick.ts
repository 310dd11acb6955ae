const SECONDS = 10;

/** Calls now, every few seconds, and whenever the page wakes up: a sleeping phone stops its timers. */
export const everyTick = (tick: () => void, signal: AbortSignal): void => {
  if (signal.aborted) return;
  const timer = setInterval(tick, SECONDS * 1000);
  signal.addEventListener('abort', () => clearInterval(timer));
  document.addEventListener('visibilitychange', tick, { signal });
  addEventListener('pageshow', tick, { signal });
  addEventListener('storage', tick, { signal });
  tick();
};
