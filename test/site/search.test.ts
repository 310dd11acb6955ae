/** The search box: by keyboard alone, and without script. */
import { expect, it } from 'vitest';
import { itAtLength } from '../thorough.ts';
import { expectQuiet, openPage, withoutPictures } from './browser.ts';

withoutPictures();

it('finds a flaw by keyboard alone', async () => {
  const opened = await openPage();
  const { page } = opened;
  await page.goto('/about/');
  const box = page.getByRole('combobox');
  await box.focus();
  await page.keyboard.type('cloudy');
  await page.getByRole('option').first().waitFor();
  await expect.poll(() => box.getAttribute('aria-expanded')).toBe('true');
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => box.getAttribute('aria-activedescendant')).not.toBeNull();
  const chosen = page.locator(`#${await box.getAttribute('aria-activedescendant')}`);
  await expect.poll(() => chosen.getAttribute('aria-selected')).toBe('true');
  await expect.poll(() => chosen.textContent()).toMatch(/cloudy/i);
  await page.keyboard.press('Escape');
  await expect.poll(() => page.getByRole('option').count()).toBe(0);
  await page.keyboard.type(' ');
  await page.getByRole('option').first().waitFor();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/defects/cloudy-film/');
  expectQuiet(opened);
  await opened.close();
});

it('answers the form with the pages that fit', async () => {
  const opened = await openPage();
  const { page } = opened;
  await page.goto('/');
  await page.getByRole('combobox').fill('bubbels in my poly');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/search/?q=*');
  const first = page.locator('hd-results a').first();
  await first.waitFor();
  await expect.poll(() => first.getAttribute('href')).toBe('/defects/bubbles/');
  expectQuiet(opened);
  await opened.close();
});

it('lets the answer lead on a wide page, with the others below each other beside it', async () => {
  const opened = await openPage({ viewport: { width: 1280, height: 900 } });
  const { page } = opened;
  await page.goto('/search/?q=bubbles');
  const answers = page.locator('hd-results .answers > li');
  await answers.first().waitFor();
  await expect.poll(() => answers.count()).toBeGreaterThan(2);
  const boxes = await answers.evaluateAll((all) =>
    all.map((one) => ({ left: one.getBoundingClientRect().left, top: one.getBoundingClientRect().top })),
  );
  const [first, ...others] = boxes;
  expect(new Set(others.map(({ left }) => left)).size).toBe(1);
  expect(first?.left).toBeLessThan(others[0]?.left ?? 0);
  // The name of the page takes no room from it.
  expect((await page.locator('h1').boundingBox())?.height).toBeLessThan(2);
  expectQuiet(opened);
  await opened.close();
});

it('hears in a few words how dry it is, and answers that', async () => {
  const opened = await openPage();
  const { page } = opened;
  await page.goto('/');
  await page.getByRole('combobox').fill('milky over navy, wet');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/tell/#say=*');
  await page.getByRole('heading', { name: 'Hands off' }).waitFor();
  expectQuiet(opened);
  await opened.close();
});

it('shows the number to call before any page, in the box and on the page of answers', async () => {
  const opened = await openPage();
  const { page } = opened;
  await page.goto('/about/');
  await page.getByRole('combobox').fill('my toddler drank mineral spirits');
  const number = page.getByRole('alert').getByRole('link', { name: '1-800-222-1222' });
  await number.waitFor();
  expect(await number.getAttribute('href')).toBe('tel:18002221222');
  expect(await page.getByRole('option').count()).toBe(0);
  await page.goto('/search/?q=rags+are+smoking');
  await page.getByRole('alert').getByRole('link', { name: '911' }).waitFor();
  await page.goto('/tell/#say=the+rags+in+the+bin+are+smoking+what+do+I+do+now');
  const call = page.locator('.understood').getByRole('link', { name: 'Call 911' });
  await call.waitFor();
  expect(await call.getAttribute('href')).toBe('tel:911');
  expect(await page.locator('.likely, .next').count()).toBe(0);
  expectQuiet(opened);
  await opened.close();
});

itAtLength('shows words from the address as text', async () => {
  const opened = await openPage();
  const { page } = opened;
  await page.goto(`/search/?q=${encodeURIComponent('<img src=x onerror=alert(1)>')}`);
  await page.getByRole('status').getByText('<img src=x').waitFor();
  expect(await page.locator('img[src="x"], img[onerror]').count()).toBe(0);
  expectQuiet(opened);
  await opened.close();
});

it('lists every flaw without script', async () => {
  const { page, close } = await openPage({ javaScriptEnabled: false });
  await page.goto('/');
  await page.getByRole('searchbox').fill('cloudy');
  await page.getByRole('button', { name: 'Go' }).click();
  await page.waitForURL('**/search/?q=cloudy');
  await page.locator('main').getByRole('link', { name: 'Lap marks' }).click();
  await page.waitForURL('**/defects/lap-marks/');
  await close();
});
