/** Resolves once the browser has nothing better to do, after five seconds at the latest. */
export const idle = (): Promise<void> =>
  new Promise((resolve) => {
    if ('requestIdleCallback' in globalThis) requestIdleCallback(() => resolve(), { timeout: 5000 });
    else setTimeout(resolve, 1000);
  });
