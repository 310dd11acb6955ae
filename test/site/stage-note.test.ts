/** What a flaw does by itself on a fresh coat: said where hands stay off, and nowhere above an order to act now. */
import { expect, it } from 'vitest';
import { builtPages } from './built.ts';

const FRESH = /^\/defects\/[^/]+\/stage-(wet|setting)\//;

it('tells what a fresh flaw does by itself under a verdict of hands off, and under no other', () => {
  const met = new Set<string>();
  for (const { address, html } of builtPages()) {
    const [, doing] = /class="verdict ([a-z-]+)" id="verdict"/.exec(html) ?? [];
    if (!doing || !FRESH.test(address)) continue;
    const isTold = /<p class="calm"/.test(html);
    expect(isTold, `${address}: ${doing}`).toBe(doing === 'leave' || doing === 'wait');
    met.add(doing);
  }
  // Every move that a wet film allows was met, and what leaves it alone.
  expect([...met].sort()).toEqual(['leave', 'lift', 'stop', 'tip-off', 'wash-off', 'wick', 'wipe-back']);
});
