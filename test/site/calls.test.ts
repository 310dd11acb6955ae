/** Whom to call: each reader's own numbers first where the device tells where it is, all alike where it does not. */
import { expect, it } from 'vitest';
import { expectQuiet, openPage, PHONE, withoutPictures } from './browser.ts';

withoutPictures();

const LONDON = { ...PHONE, timezoneId: 'Europe/London', locale: 'en-GB' } as const;
const TOKYO = { ...PHONE, timezoneId: 'Asia/Tokyo', locale: 'ja-JP' } as const;
const addresses = (links: readonly HTMLElement[]) => links.map((link) => link.getAttribute('href'));

it('puts the numbers of where she is before all others, which stand a tap away', async () => {
  const opened = await openPage(LONDON);
  const { page } = opened;
  await page.goto('/safety/emergency/');
  const rows = page.locator('.calls [data-regions]');
  const seen = rows.filter({ visible: true });
  await expect.poll(() => seen.count()).toBe(1);
  await expect.poll(() => seen.locator('a').evaluateAll(addresses)).toEqual(['tel:999', 'tel:111']);
  expect(await seen.innerText()).toMatch(/UK\s+Call 999\s+NHS 111/);
  await page.getByRole('button', { name: 'Somewhere else? All countries' }).tap();
  await expect.poll(() => seen.count()).toBe(await rows.count());
  await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('href'))).toBe('tel:911');
  // Where a text names the number of the US, hers stands before it.
  await page.goto('/safety/mixed-pot/');
  const inText = page.locator('.orders a[href^="tel:"]');
  await expect.poll(() => inText.evaluateAll(addresses)).toEqual(['tel:999', 'tel:911']);
  expectQuiet(opened);
  await opened.close();
});

it('lets all stand alike without script, on paper, and where the country is not known', async () => {
  for (const how of [{ ...LONDON, javaScriptEnabled: false }, TOKYO, 'paper'] as const) {
    const { page, close } = await openPage(how === 'paper' ? LONDON : how);
    await page.goto('/safety/');
    const rows = page.locator('.calls [data-regions]');
    // The part that would take some away has run, and has left them.
    if (how === TOKYO) await page.waitForFunction(() => customElements.get('hd-calls') !== undefined);
    if (how === 'paper') {
      await expect.poll(() => rows.filter({ visible: true }).count()).toBe(1);
      await page.emulateMedia({ media: 'print' });
    }
    expect(await rows.filter({ visible: true }).count()).toBe(await rows.count());
    const looks = await rows
      .locator('a:first-of-type')
      .evaluateAll((links) => [...new Set(links.map((link) => getComputedStyle(link).backgroundColor))]);
    expect(looks.length).toBe(1);
    await close();
  }
});

it('has them where she tells what has happened, and in the search', async () => {
  const opened = await openPage(LONDON);
  const { page } = opened;
  await page.goto('/tell/#say=my+son+swallowed+some+of+the+varnish');
  const calls = page.locator('.calls a');
  await expect.poll(() => calls.evaluateAll(addresses)).toEqual(['tel:999', 'tel:111']);
  await page.goto('/search/?q=my+son+swallowed+varnish');
  const first = page.locator('.first-call a[href^="tel:"]');
  await expect.poll(() => first.evaluateAll(addresses)).toContain('tel:999');
  expectQuiet(opened);
  await opened.close();
});
