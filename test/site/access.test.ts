/**
 * No violation of WCAG 2.2 AA or of good practice that axe can see: on every flaw, every page that leads to others, and
 * every part of a page that occurs; in light, dark and forced colors.
 */
import { expect, it } from 'vitest';
import { THOROUGH } from '../thorough.ts';
import { atRest } from './at-rest.ts';
import { AXE, axeFaults, COLOR_RULES } from './axe.ts';
import { openPage, PHONE, withoutPictures } from './browser.ts';
import { builtPages } from './built.ts';
import { everyPart, onePerKind } from './kinds.ts';

withoutPictures();

const AT_ONCE = 2;
/** So many kinds of page are enough for the short run. */
const FEW = 2;
const FEW_IN_COLORS = 1;

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
    // What is being hidden while axe looks would be measured as it goes.
    await atRest(page);
    note('light', await axeFaults(page));
    if (!inColors.has(address)) continue;
    await page.emulateMedia({ colorScheme: 'dark' });
    note('dark', await axeFaults(page, COLOR_RULES));
    await page.emulateMedia({ colorScheme: 'dark', forcedColors: 'active' });
    note('forced colors', await axeFaults(page, COLOR_RULES));
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
  // All pages take their colors from one set of tokens, so the short run looks at few in dark and in forced colors.
  const inColors = new Set(THOROUGH ? [...kinds, ...parts] : kinds.slice(0, FEW_IN_COLORS));
  const hands = Array.from({ length: AT_ONCE }, (_, hand) =>
    addresses.filter((_address, index) => index % AT_ONCE === hand),
  );
  expect((await Promise.all(hands.map((hand) => faults(hand, inColors)))).flat()).toEqual([]);
});
