/** What must never happen, whatever was tapped: errors, failed requests, slips in the text, an empty page. */
import type { Page } from 'playwright-core';

/** What no page says: a value that was not there, told as a word. */
const SLIPS = /\bundefined\b|\bNaN\b|\[object |Invalid Date/;
/** What a browser says of a request that was given up, since the tab went on; and of one without a network. */
const GIVEN_UP = /ERR_ABORTED/;
const NO_NETWORK = /ERR_INTERNET_DISCONNECTED|ERR_FAILED|Failed to fetch|dynamically imported module/;
/** Letters that even the shortest page has. */
const LEAST_LETTERS = 20;

export type Watch = {
  readonly offline: (is: boolean) => void;
  /** What went wrong since it was last asked. */
  readonly faults: () => Promise<readonly string[]>;
};

/** Text of the page as it is seen, with its names for those who hear it. A page on its way has none. */
const textOf = async (page: Page): Promise<{ readonly main: string; readonly all: string } | undefined> => {
  try {
    await page.waitForLoadState('load', { timeout: 30_000 });
    const labels = await page
      .locator('[aria-label], [alt], [placeholder]')
      .evaluateAll((all) =>
        all.flatMap((one) =>
          ['aria-label', 'alt', 'placeholder'].map((name) => one.getAttribute(name) ?? ''),
        ),
      );
    // What she typed herself is hers.
    const hers = await page.locator('q').allInnerTexts();
    const [main = ''] = await page.locator('main').allInnerTexts();
    const [body = ''] = await page.locator('body').allInnerTexts();
    const all = [await page.title(), body, ...labels].join('\n');
    return { main, all: hers.reduce((text, quote) => text.replaceAll(quote, ''), all) };
  } catch (error) {
    if (/context was destroyed|Cannot find context|frame was detached|navigat/i.test(String(error)))
      return undefined;
    throw error;
  }
};

export const watch = (page: Page): Watch => {
  const found: string[] = [];
  /** Without a network, or only just with one: what was asked before may still fail. */
  let offline = false;
  const note = (says: string) => {
    if (!(offline && NO_NETWORK.test(says)) && !GIVEN_UP.test(says)) found.push(`${says} (${page.url()})`);
  };
  page.on('pageerror', (error) => note(`error: ${error.stack ?? error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') note(`console: ${message.text()}`);
  });
  page.on('requestfailed', (request) =>
    note(`request: ${request.url()} ${request.failure()?.errorText ?? ''}`),
  );
  page.on('response', (response) => {
    if (response.status() >= 400) note(`answer ${response.status()}: ${response.url()}`);
  });
  page.on('crash', () => found.push('the tab crashed'));
  const look = async (): Promise<void> => {
    for (let go = 0; go < 20; go++) {
      const text = await textOf(page);
      if (text === undefined || text.main.trim().length < LEAST_LETTERS) {
        // It may only just have begun: a page that stays empty is one that is empty.
        if (go === 19) found.push(`main is empty (${page.url()})`);
        await page.waitForTimeout(150);
        continue;
      }
      const slip = SLIPS.exec(text.all);
      if (slip)
        found.push(
          `text: “${text.all.slice(Math.max(0, slip.index - 60), slip.index + 60)}” (${page.url()})`,
        );
      return;
    }
  };
  return {
    offline: (is) => {
      offline = is;
    },
    faults: async () => {
      await look();
      return found.splice(0);
    },
  };
};
