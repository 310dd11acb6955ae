/** One face a visit: what the first page is set in stays, on the page and from page to page, and nothing moves. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { movedOn } from './at-rest.ts';
import { expectQuiet, openPage, PHONE, withoutPictures } from './browser.ts';

withoutPictures();

const FACES = /\.woff2$/;
const faceOf = (page: Page) => page.evaluate(() => document.documentElement.dataset['face'] || 'own');
const keptOf = (page: Page) => page.evaluate(() => sessionStorage.getItem('halfdry.face'));
const boxes = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('h1, h2, .strip, .rooms a, .flag')].map((part) =>
      Math.round(part.getBoundingClientRect().height),
    ),
  );

it('keeps to the faces of the device where its own are late, and moves nothing', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  const late: (() => void)[] = [];
  await page.route(FACES, async (route) => {
    await new Promise<void>((go) => late.push(go));
    await route.continue();
  });
  await page.goto('/defects/bubbles/', { waitUntil: 'domcontentloaded' });
  await expect.poll(() => faceOf(page)).toBe('near');
  const before = await boxes(page);
  for (const go of late) go();
  await page.waitForLoadState('load');
  await page.unrouteAll({ behavior: 'wait' });
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  expect(await boxes(page)).toEqual(before);
  // web.dev, Cumulative Layout Shift: above 0.1 needs improvement.
  expect((await movedOn(page)).score).toBeLessThan(0.01);
  await page.goto('/learn/');
  expect(await faceOf(page)).toBe('near');
  expectQuiet(opened);
  await opened.close();
});

it('has the near faces as wide as its own: a heading or a strip takes as many lines', async () => {
  const own = await openPage(PHONE);
  const near = await openPage(PHONE);
  // All asked for and here before the page is looked at.
  await own.page.goto('/');
  await own.page.evaluate(() => document.fonts.ready.then(() => undefined));
  await near.page.goto('/');
  // What the first page keeps comes a moment later, and would undo what is set here.
  for (const { page } of [own, near]) await expect.poll(() => keptOf(page)).not.toBeNull();
  await near.page.evaluate(() => sessionStorage.setItem('halfdry.face', 'near'));
  for (const address of ['/', '/defects/bubbles/', '/defects/white-rings/', '/clock/', '/learn/']) {
    await own.page.evaluate(() => sessionStorage.setItem('halfdry.face', 'own'));
    await own.page.goto(address);
    await own.page.evaluate(() => document.fonts.ready.then(() => undefined));
    await near.page.goto(address);
    expect(await faceOf(near.page)).toBe('near');
    const [here, there] = [await boxes(own.page), await boxes(near.page)];
    const other = here.filter((height, index) => Math.abs(height - (there[index] ?? 0)) > 8);
    expect(here.length).toBe(there.length);
    // One in ten may break otherwise: no two faces are alike in every letter.
    expect(other.length, address).toBeLessThanOrEqual(here.length / 10);
  }
  expect(await keptOf(near.page)).toBe('near');
  await own.close();
  await near.close();
});
