/** What the job cards print: the card to fill in, the job card, and the care card for the buyer. */
import { expect, it } from 'vitest';
import { itAtLength } from '../thorough.ts';
import { expectQuiet, openPage, PHONE } from './browser.ts';
import { cardsIn, JOBS, layCoat, makeCard, openPiece, soon } from './jobs-hands.ts';
import { sheetsOf } from './paper.ts';

itAtLength('shows on the empty shelf what a card is for, and prints the card to fill in alone', async () => {
  const { page, close } = await openPage(PHONE);
  await page.goto(JOBS);
  await page.locator('.example svg.film').waitFor();
  expect(await page.locator('.gains li').count()).toBeGreaterThanOrEqual(3);
  expect(sheetsOf(await page.pdf({ format: 'Letter' }))).toBe(1);
  await makeCard(page);
  await page.goto(JOBS);
  await page.reload();
  await page.locator('.cards a').waitFor();
  expect(await page.locator('.example').isVisible()).toBe(false);
  // With cards, too, what the list prints is the card to fill in, and nothing that is tapped.
  for (const format of ['A4', 'Letter']) expect(sheetsOf(await page.pdf({ format })), format).toBe(1);
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('hd-jobs').isVisible()).toBe(false);
  expect(await page.locator('.blank .for-paper').isVisible()).toBe(true);
  await close();
});

itAtLength('prints a job card and a care card, the care card on one sheet', async () => {
  const opened = await openPage();
  const { page } = opened;
  await makeCard(page);
  await openPiece(page);
  await page.locator('.about [name=kind]').selectOption('childs-item');
  await page.locator('.about [name=age][value=unknown]').check();
  // Making the base ready means sanding what may hold lead: the plan refuses it, and so does the card, before the coat.
  await layCoat(page, 'brush', /lead/);
  await page.getByRole('link', { name: 'Care card for the buyer' }).click();
  await page.locator('.care').waitFor();
  for (const format of ['A4', 'Letter']) expect(sheetsOf(await page.pdf({ format })), format).toBe(1);
  // Who sold it, and when it changed hands, is written by hand.
  expect(await page.locator('.care .ruled').isVisible()).toBe(false);
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.care .ruled dt').allInnerTexts()).toContain('Handed over on');
  expect(await page.locator('.care .ruled').isVisible()).toBe(true);
  await page.emulateMedia({ media: 'screen' });
  expect(await page.locator('hd-clock').isVisible()).toBe(false);
  const care = await page.locator('.care').innerText();
  expect(care).toMatch(/Full use from\s+\w+day, \w+ \d+, \d{4}/);
  expectQuiet(opened);
  await opened.close();
});

itAtLength('has a care card without dates where the product is unknown, and none for a crib', async () => {
  const opened = await openPage();
  const { page } = opened;
  const id = await makeCard(page);
  // Nobody is handed a card of a piece without a coat; its address answers all the same.
  await soon(() => page.locator('.card-acts').innerText()).toContain('comes with the first coat');
  expect(await page.getByRole('link', { name: 'Care card for the buyer' }).count()).toBe(0);
  await page.goto(`${JOBS}#care-${id}`);
  await page.locator('.care .caution').waitFor();
  expect(await page.locator('.care').innerText()).toContain('there is no date');
  expect(await page.locator('form.lay').filter({ visible: true }).count()).toBe(0);
  await page.getByRole('link', { name: 'Back to the job card' }).click();
  await openPiece(page);
  await page.locator('.about [name=kind]').selectOption('crib');
  await soon(async () => (await cardsIn(page))[0]?.kind).toBe('crib');
  await page.goto(`${JOBS}#care-${id}`);
  await soon(() => page.locator('.verdict').first().innerText()).toBe('No care card');
  expectQuiet(opened);
  await opened.close();
});

it('without script it says what it is, and gives a card to fill in and the rules to reckon', async () => {
  const { page, close } = await openPage({ javaScriptEnabled: false });
  await page.goto(JOBS);
  expect(await page.locator('form.lay').first().isVisible()).toBe(false);
  const text = await page.locator('main').innerText();
  for (const part of [
    'A card to fill in by hand',
    'Recoat from',
    'milliliters ÷ square meters',
    'script is off here',
  ])
    expect(text).toContain(part);
  expect(await page.locator('.blank tbody tr').count()).toBe(6);
  expect(sheetsOf(await page.pdf({ format: 'A4' }))).toBe(1);
  await close();
});
