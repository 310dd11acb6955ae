/** A coat with isocyanate in it, on the clock, on a card and in a plan: asked, kept, and nothing makes dust or mist of it. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { HOUR_MS } from '#engine/plain/time.ts';
import { expectQuiet, openPage, PHONE, withoutPictures } from './browser.ts';
import { answer, cardsIn, makeCard, soon } from './jobs-hands.ts';

withoutPictures();

const WORDS = /No dust of it before its can says fully cured/;
const asked = (page: Page) => page.locator('[name=hardener]').isVisible();
const titles = (page: Page) => page.locator('.plan .steps > li > b').allTextContents();

it('is asked on the clock of kinds that may come with a hardener, and kept', async () => {
  const opened = await openPage({ ...PHONE, locale: 'en-US' });
  const { page } = opened;
  await page.clock.install({ time: new Date('2026-11-24T17:00:00Z') });
  await page.goto('/clock/');
  await soon(() => asked(page)).toBe(true);
  expect(await page.locator('[name=hardener]').inputValue()).toBe('');
  await page.selectOption('[name=product]', 'shellac');
  await soon(() => asked(page)).toBe(false);
  await page.selectOption('[name=product]', 'water-based-polyurethane');
  await page.selectOption('[name=hardener]', 'isocyanate');
  await page.locator('.go').tap();
  await page.locator('.on-clock').waitFor();
  await page.clock.setSystemTime(new Date(Date.parse('2026-11-24T17:00:00Z') + 26 * HOUR_MS));
  await page.reload();
  const verdict = () => page.locator('.on-clock .verdict').innerText();
  await soon(verdict).toMatch(/^No sanding before full cure/);
  const coat = await page.locator('.on-clock').innerText();
  expect(coat).toMatch(WORDS);
  expect(coat).not.toMatch(/\b(dull it|always sand|sand before|light strokes)/i);
  // The next coat of the same can is asked with the same answer, another product anew.
  await page.locator('[data-act=next]').click();
  await soon(() => page.locator('[name=hardener]').inputValue()).toBe('isocyanate');
  await page.selectOption('[name=product]', 'waterborne-acrylic');
  await soon(() => page.locator('[name=hardener]').inputValue()).toBe('');
  expectQuiet(opened);
  await opened.close();
});

it('is no coat to spray on a card, and where it lies already its stop stands at the head', async () => {
  const opened = await openPage();
  const { page } = opened;
  await makeCard(page);
  await page.getByRole('button', { name: 'Lay a coat' }).click();
  await page.locator('.lay-coat [data-part=more]').evaluate((more) => more.setAttribute('open', ''));
  await page.locator('.lay-coat [name=tool][value=spray-gun]').check();
  await page.selectOption('.lay-coat [name=hardener]', 'isocyanate');
  await soon(() => page.locator('.lay-coat .weather').innerText()).toMatch(
    /^Do not lay it[\s\S]*never sprayed at home/,
  );
  await page.getByRole('button', { name: 'Coat laid: start the clock' }).click();
  await soon(() => page.getByRole('dialog').innerText()).toContain('never sprayed at home');
  await answer(page, 'It lies already: note it');
  await soon(() => page.locator('.laid > li').count()).toBe(1);
  await soon(async () => (await cardsIn(page))[0]?.coats[0]?.hardener).toBe('isocyanate');
  await soon(() => page.locator('.laid > li').innerText()).toContain('with isocyanate in it');
  await soon(() => page.locator('main').innerText()).toContain('this hardener can give asthma for life');
  expectQuiet(opened);
  await opened.close();
});

it('is wiped, not sanded, in a plan, which is a no with a gun and offers a brush', async () => {
  const opened = await openPage();
  const { page } = opened;
  const link = (more: string) =>
    `/schedule/#product=water-based-polyurethane&base=latex-paint&age=none&start=2027-03-08T09:00${more}`;
  await page.goto(link('&tool=brush'));
  await page.locator('.plan .verdict').waitFor();
  await soon(
    async () => (await titles(page)).filter((title) => /if it is of one part/.test(title)).length,
  ).toBe(2);
  await page.goto(link('&tool=spray-gun&hardener=isocyanate'));
  await soon(() => page.locator('.plan .verdict').innerText()).toBe('No');
  expect(await page.locator('.plan').innerText()).toContain('never sprayed at home');
  await page.getByRole('button', { name: 'Use a brush' }).click();
  await soon(() => page.locator('.plan .verdict').innerText()).toMatch(/^3 coats/);
  const steps = await titles(page);
  expect(steps.filter((title) => title === 'Do not sand it: wipe it, and let it dry').length).toBe(2);
  expect(steps.filter((title) => /P\d+/.test(title))).toEqual(['Sand with P320']);
  expect(new URL(page.url()).hash).toContain('hardener=isocyanate');
  expectQuiet(opened);
  await opened.close();
});
