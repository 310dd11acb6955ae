/** No violation of WCAG 2.2 AA or of good practice that axe can see: on every layout, in both color schemes. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, it } from 'vitest';
import { openPage, PHONE } from './browser.ts';
import { type BuiltPage, onePerShape } from './built.ts';

type Axe = {
  run: (
    root: Document,
    options: object,
  ) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
};

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const AT_ONCE = 4;

const faults = async (pages: readonly BuiltPage[], colorScheme: 'light' | 'dark'): Promise<string[]> => {
  const { page, close } = await openPage({ ...PHONE, bypassCSP: true, colorScheme });
  const found: string[] = [];
  for (const { address } of pages) {
    await page.goto(address);
    await page.evaluate(AXE);
    const violations = await page.evaluate(async (values) => {
      const { axe } = window as unknown as { axe: Axe };
      const { violations } = await axe.run(document, { runOnly: { type: 'tag', values } });
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`);
    }, TAGS);
    found.push(...violations.map((violation) => `${address} ${violation}`));
  }
  await close();
  return found;
};

it.each(['light', 'dark'] as const)('has no fault that axe can see, %s', async (scheme) => {
  const pages = onePerShape();
  const hands = Array.from({ length: AT_ONCE }, (_, hand) =>
    pages.filter((_page, index) => index % AT_ONCE === hand),
  );
  expect((await Promise.all(hands.map((hand) => faults(hand, scheme)))).flat()).toEqual([]);
});
