/** Every picture is on the paper: what is printed is never scrolled to, so none may wait for that. */
import { expect, it } from 'vitest';
import { openPage, PHONE } from './browser.ts';

it.each(['/learn/practice/sheet/', '/defects/bubbles/'])(
  'prints %s with all of its pictures, tapped at once',
  async (address) => {
    const { page, close } = await openPage(PHONE);
    await page.addInitScript(() => {
      window.print = () => {
        const there = [...document.images].map(({ complete, naturalWidth }) => complete && naturalWidth > 0);
        document.documentElement.dataset['printed'] = JSON.stringify(there);
      };
    });
    await page.goto(address);
    await page.getByRole('button', { name: 'Print' }).tap();
    await page.locator('html[data-printed]').waitFor();
    const there: unknown = JSON.parse((await page.locator('html').getAttribute('data-printed')) ?? '[]');
    expect(there).toHaveLength(await page.locator('img').count());
    expect(new Set(there as boolean[])).toEqual(new Set([true]));
    await close();
  },
);

it('shows the story at once and nothing else, until it is heard', async () => {
  const { page, close } = await openPage(PHONE);
  let release = () => {};
  const held = new Promise<void>((done) => {
    release = done;
  });
  await page.route('**/ear.json', async (route) => {
    await held;
    await route.continue();
  });
  await page.goto('/tell/#say=milky+poly+over+navy%2C+still+wet');
  const line = page.locator('.told-line:visible');
  await line.waitFor();
  const before = await line.boundingBox();
  await expect.poll(() => line.innerText()).toMatch(/milky poly/);
  expect(await page.getByRole('contentinfo').first().isVisible()).toBe(true);
  await expect
    .poll(async () => (await page.getByRole('contentinfo').first().boundingBox())?.y)
    .toBeGreaterThan(700);
  release();
  await page.locator('.understood .verdict').waitFor();
  await expect.poll(() => page.locator('.told-line:visible').count()).toBe(1);
  const moved = async () => Math.abs(((await line.boundingBox())?.y ?? 0) - (before?.y ?? 99));
  await expect.poll(moved).toBeLessThan(20);
  await close();
});
