/** What hard use does to a card: a year typed by hand, a signal that is gone, a damaged record, a wet film. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { readCard } from '#engine/model/read-card.ts';
import { expectQuiet, openPage, withoutPictures } from './browser.ts';
import { answer, cardsIn, JOBS, layCoat, makeCard, openPiece, putRecords, soon } from './jobs-hands.ts';

withoutPictures();

const trouble = (page: Page) => page.locator('.trouble').innerText();
const told = (page: Page) => page.locator('[data-part=said]').innerText();

it('takes a year that is typed digit by digit, and refuses one that cannot be beside its field', async () => {
  const opened = await openPage({ locale: 'en-US' });
  const { page } = opened;
  await makeCard(page);
  await openPiece(page);
  const field = page.locator('.about [name=base-laid]');
  await field.fill('2026-11-01T09:30');
  await field.blur();
  // That something is saved may be said of what came before it.
  await soon(async () => (await cardsIn(page))[0]?.baseLaidAt).toBeDefined();
  const [before] = await cardsIn(page);
  await field.focus();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.type('202', { delay: 120 });
  await soon(() => field.inputValue()).toBe('0202-11-01T09:30');
  expect((await cardsIn(page))[0]).toEqual(before);
  await page.keyboard.type('5');
  await soon(async () => new Date((await cardsIn(page))[0]?.baseLaidAt ?? 0).getFullYear()).toBe(2025);
  const [after] = await cardsIn(page);
  await field.fill('0202-11-01T09:30');
  await field.blur();
  await soon(() => page.locator('#plan-base-laid-fault').innerText()).toContain('four digits');
  await soon(() => field.getAttribute('aria-invalid')).toBe('true');
  expect((await cardsIn(page))[0]).toEqual(after);
  expect(readCard(after).ok).toBe(true);
  expectQuiet(opened);
  await opened.close();
});

it('tells a failed fetch as one, not as cards that are lost', async () => {
  const opened = await openPage();
  const { page } = opened;
  const id = await makeCard(page);
  await page.route('**/jobs/data.json', (route) => route.abort());
  await page.goto('/about/');
  await page.goto(`${JOBS}#card-${id}`);
  await soon(() => trouble(page)).toContain('no signal?');
  expect(await trouble(page)).not.toContain('Not saved');
  await opened.close();
});

it('hands nothing over without a coat, or with a wet one', async () => {
  const opened = await openPage();
  const { page } = opened;
  // It says why in place of the button.
  const why = page.locator('[data-part=early]');
  const button = page.getByRole('button', { name: 'Handed over today' });
  await makeCard(page);
  await soon(() => why.innerText()).toContain('yet: no coat is on the card');
  await layCoat(page);
  await soon(() => why.innerText()).toMatch(/hands off until/);
  expect(await button.count()).toBe(0);
  expect((await cardsIn(page))[0]?.handedOverAt).toBeUndefined();
  expectQuiet(opened);
  await opened.close();
});

it('refuses before the coat what a plan refuses, and notes it only where it lies already', async () => {
  const opened = await openPage();
  const { page } = opened;
  await makeCard(page);
  await openPiece(page);
  await page.locator('.about [name=base]').selectOption('wax');
  await soon(async () => (await cardsIn(page))[0]?.base).toBe('wax');
  await page.getByRole('button', { name: 'Lay a coat' }).click();
  await soon(() => page.locator('.lay-coat .weather').innerText()).toMatch(/^Do not lay it[\s\S]*will peel/);
  await page.getByRole('button', { name: 'Coat laid: start the clock' }).click();
  await soon(() => page.getByRole('dialog').innerText()).toContain('will peel');
  await answer(page, 'Leave it: nothing is noted');
  expect((await cardsIn(page))[0]?.coats).toEqual([]);
  // Over bare wood the same form tells of the rags before oil is laid with a cloth.
  await page.locator('.about [name=base]').selectOption('bare-wood');
  await page.locator('.lay-coat [name=product]').selectOption('drying-oil');
  await page.locator('.lay-coat [data-part=more]').evaluate((more) => more.setAttribute('open', ''));
  await page.locator('.lay-coat [name=tool][value=cloth]').check();
  await soon(() => page.locator('.lay-coat .weather').innerText()).toMatch(/rags/i);
  expectQuiet(opened);
  await opened.close();
});

it('mends a damaged card, and keeps what was found aside until it is taken away', async () => {
  const opened = await openPage();
  const { page } = opened;
  const id = await makeCard(page);
  const [card] = await cardsIn(page);
  await putRecords(page, 'cards', [{ ...card, baseLaidAt: -62_077_761_000_000, product: 'constructor' }]);
  await page.reload();
  await page.getByRole('heading', { name: 'This card could not be read' }).waitFor();
  await page.getByRole('button', { name: 'Mend it so' }).click();
  // A product by the name of what every object has by birth is one that is not known here.
  await page.getByRole('button', { name: 'Lay a coat' }).waitFor();
  expect(readCard((await cardsIn(page))[0]).ok).toBe(true);
  await putRecords(page, 'cards', [{ ...card, coats: 7 }]);
  await page.goto('/about/');
  await page.goto(`${JOBS}#card-${id}`);
  await page.getByRole('button', { name: 'Set it aside, out of the list' }).click();
  await page.locator('.aside summary').click();
  await page.getByRole('button', { name: 'Delete it…' }).click();
  await answer(page, 'Delete it');
  await soon(() => page.locator('.aside').count()).toBe(0);
  expect(await cardsIn(page)).toEqual([]);
  expectQuiet(opened);
  await opened.close();
});

it('keeps every version of clashes in a row, also after the page is loaded again', async () => {
  const opened = await openPage();
  const { page } = opened;
  const id = await makeCard(page);
  const other = await page.context().newPage();
  await other.goto(`${JOBS}#card-${id}`);
  await other.getByRole('button', { name: 'Lay a coat' }).waitFor();
  const deaf = () => {
    BroadcastChannel.prototype.postMessage = () => undefined;
  };
  await page.evaluate(deaf);
  await other.evaluate(deaf);
  await page.locator('#job-notes').fill('first, here');
  await soon(async () => (await cardsIn(page))[0]?.notes).toBe('first, here');
  await other.locator('#job-notes').fill('first, there');
  await soon(() => other.locator('.clash > div').count()).toBe(1);
  await page.locator('#job-notes').fill('second, here');
  await soon(async () => (await cardsIn(page))[0]?.notes).toBe('second, here');
  await other.locator('#job-notes').fill('second, there');
  await soon(() => other.locator('.clash > div').count()).toBe(2);
  await soon(() => told(other)).toContain('both versions are kept below');
  await other.reload();
  await soon(() => other.locator('.clash > div').count()).toBe(2);
  const texts = (await other.locator('.clash').innerText()).replace(/\s+/g, ' ');
  for (const text of ['first, here', 'first, there', 'second, here', 'second, there'])
    expect(texts).toContain(text);
  expectQuiet(opened);
  await opened.close();
});

it('names the photos for which a card has no room', async () => {
  const opened = await openPage();
  const { page } = opened;
  const id = await makeCard(page);
  const [card] = await cardsIn(page);
  const photos = Array.from({ length: 59 }, (_, index) => ({
    id: `p${index}`,
    takenAt: Date.now(),
    width: 1,
    height: 1,
  }));
  await putRecords(page, 'cards', [{ ...card, photos }]);
  await page.goto('/about/');
  await page.goto(`${JOBS}#card-${id}`);
  await page.getByText('Room for 1 photo.').waitFor();
  const pixel = Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==',
    'base64',
  );
  await page
    .locator('.lists .file input')
    .setInputFiles(
      ['a', 'b', 'c'].map((name) => ({ name: `${name}.png`, mimeType: 'image/png', buffer: pixel })),
    );
  await soon(() => told(page)).toContain('since it takes 60 photos: b.png, c.png');
  expect((await cardsIn(page))[0]?.photos.length).toBe(60);
  expectQuiet(opened);
  await opened.close();
});
