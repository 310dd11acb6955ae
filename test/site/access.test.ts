/**
 * No violation of WCAG 2.2 AA or of good practice that axe can see: on every flaw, every page that leads to others, and
 * every part of a page that occurs; in light, dark and forced colors.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { THOROUGH } from '../thorough.ts';
import { openPage, PHONE, withoutPictures } from './browser.ts';
import { builtPages } from './built.ts';
import { everyPart, onePerKind } from './kinds.ts';

withoutPictures();

type Axe = {
  run: (
    root: Document,
    options: object,
  ) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
};

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const ALL = {
  type: 'tag',
  values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
};
/** Nothing else hangs on the colors: the pages are the same but for them. */
const COLORS = { type: 'rule', values: ['color-contrast', 'link-in-text-block'] };
const AT_ONCE = 2;
/** So many kinds of page are enough for the short run. */
const FEW = 8;

const run = (page: Page, runOnly: typeof ALL): Promise<string[]> =>
  page.evaluate(async (rules) => {
    const { axe } = window as unknown as { axe: Axe };
    const { violations } = await axe.run(document, {
      runOnly: rules,
      resultTypes: ['violations'],
      preload: false,
    });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`);
  }, runOnly);

const faults = async (addresses: readonly string[], inColors: ReadonlySet<string>): Promise<string[]> => {
  const { page, close } = await openPage(PHONE);
  await page.addInitScript({ content: AXE });
  const session = await page.context().newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.setBlockedURLs', { urls: ['*.webp'] });
  const found: string[] = [];
  for (const address of addresses) {
    const note = (colors: string, faults: readonly string[]) =>
      found.push(...faults.map((fault) => `${address}, ${colors}: ${fault}`));
    await page.emulateMedia({ colorScheme: 'light', forcedColors: 'none' });
    await page.goto(address, { waitUntil: 'domcontentloaded' });
    note('light', await run(page, ALL));
    if (!inColors.has(address)) continue;
    await page.emulateMedia({ colorScheme: 'dark' });
    note('dark', await run(page, COLORS));
    await page.emulateMedia({ colorScheme: 'dark', forcedColors: 'active' });
    note('forced colors', await run(page, COLORS));
  }
  await close();
  return found;
};

it('has no fault that axe can see', async () => {
  const kinds = onePerKind().map(({ address }) => address);
  const parts = everyPart();
  const top = builtPages()
    .map(({ address }) => address)
    .filter((address) => /^\/(defects\/[^/]+\/|[^/]+\/)?$/.test(address));
  expect(top.length).toBeGreaterThan(70);
  const addresses = THOROUGH ? [...new Set([...kinds, ...parts, ...top])] : kinds.slice(0, FEW);
  const inColors = new Set([...kinds, ...parts]);
  const hands = Array.from({ length: AT_ONCE }, (_, hand) =>
    addresses.filter((_address, index) => index % AT_ONCE === hand),
  );
  expect((await Promise.all(hands.map((hand) => faults(hand, inColors)))).flat()).toEqual([]);
});
