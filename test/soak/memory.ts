/** What the tab holds, once all that nobody needs is thrown away. */
import type { CDPSession, Page } from 'playwright-core';

export type Held = {
  readonly act: number;
  /** Bytes. */
  readonly heap: number;
  readonly nodes: number;
  readonly listeners: number;
  readonly documents: number;
};

export const heldBy = async (session: CDPSession, act: number): Promise<Held> => {
  // What the first round lets go of may hold more: finalizers and weak references run in between.
  for (let round = 0; round < 3; round++) await session.send('HeapProfiler.collectGarbage');
  const { metrics } = await session.send('Performance.getMetrics');
  const of = (wanted: string) => metrics.find(({ name }) => name === wanted)?.value ?? Number.NaN;
  return {
    act,
    heap: of('JSHeapUsedSize'),
    nodes: of('Nodes'),
    listeners: of('JSEventListeners'),
    documents: of('Documents'),
  };
};

/** Bytes that the site keeps on the device, and letters in its small notes. */
export const storedBy = (page: Page): Promise<{ readonly bytes: number; readonly notes: number }> =>
  page.evaluate(async () => ({
    bytes: (await navigator.storage.estimate()).usage ?? 0,
    notes: JSON.stringify({ ...localStorage }).length,
  }));
