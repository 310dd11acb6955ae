/** What is told of the piece once: stops and cautions fit it, questions fall away, and it is remembered. */
import { expect, it } from 'vitest';

import { expectQuiet, openPage, PHONE, withoutPictures } from './browser.ts';
import { builtPages } from './built.ts';

withoutPictures();

/** Some page of a walk that ends in sanding, so old paint matters. */
const SANDING =
  builtPages().find(({ html }) => /class="?stop-rule"? data-rule="?is-there-old-paint-below/.test(html))
    ?.address ?? '';
const LEAD = '[data-rule=is-there-old-paint-below]';

const opened = async (facts?: Record<string, unknown>) => {
  const one = await openPage(PHONE);
  if (facts)
    await one.page.addInitScript(
      (kept) => localStorage.setItem('halfdry.case', kept),
      JSON.stringify({ version: 1, facts }),
    );
  return one;
};

it('takes the stop for old paint away when she says that there is none, and remembers it', async () => {
  const one = await opened();
  const { page } = one;
  await page.goto(SANDING);
  expect(await page.locator(`.stops ${LEAD}`).isVisible()).toBe(true);
  await page.getByRole('button', { name: /only mine/ }).tap();
  await page.locator(`.stops ${LEAD}`).waitFor({ state: 'hidden' });
  expect(await page.locator(`.steps ${LEAD}`).isVisible()).toBe(false);
  await page.reload();
  await page.locator(`.stops ${LEAD}`).waitFor({ state: 'hidden' });
  expect(await page.locator('h1:visible').count()).toBe(1);
  expectQuiet(one);
  await one.close();
});

it('puts the stop for a crib before everything, with one heading', async () => {
  const one = await opened({ piece: { value: 'crib', how: 'told' } });
  await one.page.goto('/defects/cloudy-film/stage-wet/');
  await one.page.locator('.stops [data-rule=not-a-crib]').waitFor();
  expect(await one.page.locator('h1:visible').allTextContents()).toEqual(['Stop first']);
  expectQuiet(one);
  await one.close();
});

it('keeps every caution where the facts kept here make no sense', async () => {
  const one = await opened({ age: { value: '<img src=x onerror=alert(1)>', how: 'told' } });
  await one.page.goto(SANDING);
  await one.page.waitForLoadState('networkidle');
  expect(await one.page.locator(`.stops ${LEAD}`).isVisible()).toBe(true);
  expectQuiet(one);
  await one.close();
});
