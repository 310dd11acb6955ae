/** When a page has done what it does by itself, and what moved until then. */
import type { Page } from 'playwright-core';

/** What a page shows while a part of it is still to come. */
const STILL_TO_COME = [
  'hd-told:not(:defined)',
  'hd-calls:not(:defined)',
  '.before-script',
  '.chosen:empty',
  'hd-coats[hidden]',
  'hd-coats .weather:not(:has(.caution))',
].join(', ');

/** Waits until all that its scripts put into a page is there. */
export const atRest = async (page: Page): Promise<void> => {
  await page.waitForFunction((still) => !document.querySelector(still), STILL_TO_COME);
};

/** All that moved by itself since the page began, to the last frame: web.dev, Cumulative Layout Shift, and what it was. */
export const movedOn = (page: Page): Promise<{ readonly score: number; readonly what: string }> =>
  page.evaluate(async () => {
    // Two frames on, what was changed until now is drawn, and noted.
    for (let frame = 0; frame < 2; frame++) await new Promise(requestAnimationFrame);
    const observer = new PerformanceObserver(() => undefined);
    observer.observe({ type: 'layout-shift', buffered: true });
    const moved = observer.takeRecords() as (PerformanceEntry & {
      value: number;
      sources: { node?: Element }[];
    })[];
    return {
      score: moved.reduce((sum, { value }) => sum + value, 0),
      what: moved.flatMap(({ sources }) => sources.map(({ node }) => node?.nodeName ?? '')).join(' '),
    };
  });
