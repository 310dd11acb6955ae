/** The store of the job cards in a real browser: damage, two tabs, no storage at all, storage that was cleared. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { listedOf } from '../../site/client/jobs/store/listed.ts';
import { manyCards } from '../many-cards.ts';
import { itAtLength, someOf } from '../thorough.ts';
import { expectQuiet, type Opened, openPage, withoutPictures } from './browser.ts';
import {
  answer,
  cardsIn,
  JOBS,
  layCoat,
  makeCard,
  openFiles,
  openPiece,
  putRecords,
  recordsIn,
  sayPiece,
  soon,
} from './jobs-hands.ts';

withoutPictures();

const trouble = (page: Page) => page.locator('.trouble').innerText();
const saved = (page: Page) => page.getByText(/^Saved \d/).waitFor();

itAtLength('shows no damaged card, offers it as it lies there, and leaves it there', async () => {
  const opened = await openPage();
  const { page } = opened;
  const id = await makeCard(page);
  await makeCard(page, 'Chair');
  const [card] = (await cardsIn(page)).filter((one) => one.id === id);
  await putRecords(page, 'cards', [{ ...card, coats: [{ id: 'c', laidAt: 'yesterday' }] }]);
  await page.goto(JOBS);
  await page.reload();
  await page.locator('.cards', { hasText: 'could not be read' }).waitFor();
  await page.getByRole('link', { name: 'Navy dresser' }).click();
  await page.getByRole('heading', { name: 'This card could not be read' }).waitFor();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save what is there as a file' }).click(),
  ]);
  expect(JSON.parse(readFileSync((await download.path()) ?? '', 'utf8'))).toMatchObject({
    id,
    coats: [{ laidAt: 'yesterday' }],
  });
  expect((await cardsIn(page)).length).toBe(2);
  expectQuiet(opened);
  await opened.close();
});

itAtLength('offers the second copy in the place of a damaged card', async () => {
  const opened = await openPage();
  const { page } = opened;
  await makeCard(page);
  const sound = await cardsIn(page);
  await putRecords(page, 'cards', [{ ...sound[0], coats: 'gone' }]);
  await page.reload();
  await page.getByRole('button', { name: 'Take the second copy' }).click();
  await page.getByRole('button', { name: 'Lay a coat' }).waitFor();
  await soon(() => cardsIn(page)).toEqual(sound);
  await page.goto(JOBS);
  await page.getByText('Set aside: 1 damaged card').waitFor();
  expectQuiet(opened);
  await opened.close();
});

const second = async ({ page }: Opened, id: string): Promise<Page> => {
  const tab = await page.context().newPage();
  await tab.goto(`${JOBS}#card-${id}`);
  await tab.getByRole('button', { name: 'Lay a coat' }).waitFor();
  return tab;
};

it('keeps to what is searched for in the list of cards while another tab changes them', async () => {
  const opened = await openPage();
  const { page } = opened;
  const id = await makeCard(page);
  const cards = manyCards(9);
  await putRecords(page, 'cards', cards);
  await putRecords(page, 'summaries', cards.map(listedOf));
  await page.goto(JOBS);
  await page.reload();
  const shown = page.locator('.cards a');
  await soon(() => shown.count()).toBe(10);
  await page.getByLabel('Find a card by its name').fill('piece 7');
  await soon(() => shown.allInnerTexts()).toEqual([expect.stringContaining('Piece 7')]);
  const other = await second(opened, id);
  await openPiece(other);
  await other.locator('.about [name=name]').fill('Piece 77');
  await other.locator('.about [name=name]').blur();
  await saved(other);
  // The renamed card is found as well, so the list was read anew; the eight others stay out of it.
  await soon(() => shown.allInnerTexts()).toEqual([
    expect.stringContaining('Piece 77'),
    expect.stringContaining('Piece 7'),
  ]);
  expect(await page.getByText('2 of 10').count()).toBe(1);
  expectQuiet(opened);
  await opened.close();
});

itAtLength(
  'brings a change to the other tab, puts two changes together, and hands back what clashes',
  async () => {
    const opened = await openPage();
    const { page } = opened;
    const id = await makeCard(page);
    const other = await second(opened, id);
    await other.locator('#job-notes').fill('from the other tab');
    await saved(other);
    await soon(() => page.locator('#job-notes').inputValue()).toBe('from the other tab');
    await soon(() => page.locator('[data-part=said]').innerText()).toContain('this is the newer card');

    // A phone that slept does not hear the other tab: here it only hears nothing.
    await page.evaluate(() => {
      BroadcastChannel.prototype.postMessage = () => undefined;
    });
    await openPiece(page);
    await openPiece(other);
    await page.locator('.about [name=name]').fill('Blue dresser');
    await page.locator('.about [name=name]').blur();
    // That something is saved may be said of what came before it.
    await soon(async () => (await cardsIn(page))[0]?.name).toBe('Blue dresser');
    await other.locator('.about [name=sheen]').selectOption('matte');
    await soon(() => other.locator('[data-part=said]').innerText()).toContain('with your change in it');
    await soon(async () => (await cardsIn(page))[0]).toMatchObject({ name: 'Blue dresser', sheen: 'matte' });

    await page.evaluate(() => {
      BroadcastChannel.prototype.postMessage = () => undefined;
    });
    await page.reload();
    await page.getByRole('button', { name: 'Lay a coat' }).waitFor();
    await page.evaluate(() => {
      BroadcastChannel.prototype.postMessage = () => undefined;
    });
    await page.locator('#job-notes').fill('mine, first');
    await soon(async () => (await cardsIn(page))[0]?.notes).toBe('mine, first');
    await other.locator('#job-notes').fill('mine, second');
    const clash = other.locator('.clash');
    await clash.waitFor();
    await soon(() => clash.innerText()).toMatch(/mine, first[\s\S]*mine, second/);
    expect((await cardsIn(page))[0]?.notes).toBe('mine, first');
    await soon(() => other.locator('#job-notes').inputValue()).toBe('mine, first');
    await other.getByRole('button', { name: 'Put mine in its place' }).click();
    await soon(async () => (await cardsIn(page))[0]?.notes).toBe('mine, second');
    expectQuiet(opened);
    await opened.close();
  },
);

it.each(
  someOf(1, [
    [
      'throws',
      () =>
        Object.assign(IDBFactory.prototype, {
          open: () => {
            throw new DOMException('no', 'SecurityError');
          },
        }),
    ],
    [
      'fails',
      () =>
        Object.assign(IDBFactory.prototype, {
          open: () => {
            const request = Object.assign(new EventTarget(), {
              error: new DOMException('no', 'InvalidStateError'),
            });
            Object.setPrototypeOf(request, IDBOpenDBRequest.prototype);
            setTimeout(() => request.dispatchEvent(new Event('error')), 10);
            return request;
          },
        }),
    ],
  ] as const),
)('where the store %s, says so and offers the card as a file', async (_how, deny) => {
  const opened = await openPage();
  const { page } = opened;
  await page.addInitScript(deny);
  await page.goto(JOBS);
  await soon(() => trouble(page)).toContain('This browser keeps nothing here');
  await page.getByRole('link', { name: 'New job card' }).click();
  await page.getByLabel('Name of the piece').fill('Navy dresser');
  await sayPiece(page);
  await page.locator('.about [name=age][value=none]').check();
  await page.getByRole('button', { name: 'Make the card' }).click();
  await soon(() => trouble(page)).toContain('This browser keeps nothing here');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save this card as a file' }).click(),
  ]);
  expect(readFileSync((await download.path()) ?? '', 'utf8')).toContain('Navy dresser');
  expectQuiet(opened);
  await opened.close();
});

/** All databases of the site gone, as a browser leaves them that finds them torn; with `copies`, as she clears them. */
const loseDatabases = (page: Page, copies = false): Promise<void> =>
  page.evaluate(async (all) => {
    for (const { name } of await indexedDB.databases())
      await new Promise((done) => {
        indexedDB.deleteDatabase(name ?? '').onsuccess = done;
      });
    if (all) for (const name of await caches.keys()) await caches.delete(name);
  }, copies);

itAtLength('notices that its storage was cleared', async () => {
  const opened = await openPage();
  const { page } = opened;
  await makeCard(page);
  await page.goto(JOBS);
  await page.locator('.cards a').waitFor();
  await page.goto('/about/');
  await loseDatabases(page, true);
  await page.goto(JOBS);
  await soon(() => page.locator('.told').innerText()).toContain('This browser held 1 card');
  await opened.close();
});

itAtLength(
  'puts cards, photos and coats back where the browser has lost its databases, and tells so once',
  async () => {
    const opened = await openPage();
    const { page } = opened;
    await makeCard(page, 'Chair');
    await openFiles(page);
    await page.getByRole('button', { name: 'Delete this card' }).click();
    await answer(page, 'Delete it');
    await page.locator('.told', { hasText: 'is taken away' }).waitFor();
    const id = await makeCard(page);
    await layCoat(page);
    const buffer = await page.screenshot({ clip: { x: 0, y: 0, width: 64, height: 48 } });
    await page
      .locator('.lists .file input')
      .setInputFiles({ name: 'flaw.png', mimeType: 'image/png', buffer });
    await page.locator('.photos img').waitFor();
    await saved(page);
    await soon(async () => (await recordsIn(page, 'photos')).length).toBe(1);
    const [cards, photos] = [await cardsIn(page), await recordsIn<{ id: string }>(page, 'photos')];
    expect([cards.length, photos.length]).toEqual([1, 1]);

    await page.goto('/robots.txt');
    await loseDatabases(page);
    expect(await page.evaluate(() => indexedDB.databases())).toEqual([]);
    await page.goto(JOBS);
    await soon(() => page.locator('.told').innerText()).toContain(
      'This browser had lost its store; 1 card was put back from the second copy.',
    );
    expect(await cardsIn(page)).toEqual(cards);
    expect((await recordsIn<{ id: string }>(page, 'photos')).map((photo) => photo.id)).toEqual(
      photos.map((photo) => photo.id),
    );
    await page.locator('.cards a').click();
    await page.locator('.photos img').waitFor();
    await page.goto('/clock/');
    await page.locator('[data-part=troubles]', { hasText: '1 coat was put back on the clock' }).waitFor();
    await soon(() => page.locator('[data-part=coats]').innerText()).toContain('Navy dresser');

    // Told once; and what lies there by now is copied again.
    await page.goto('/robots.txt');
    await loseDatabases(page);
    await page.evaluate(() => localStorage.clear());
    await page.goto(`${JOBS}#card-${id}`);
    await page.locator('.photos img').waitFor();
    await page.goto(JOBS);
    await soon(() => page.locator('.told').innerText()).toContain('1 card was put back');
    await page.reload();
    await page.locator('.cards a').waitFor();
    expect(await page.locator('.told').innerText()).toBe('');
    await page.goto('/clock/');
    await page.locator('[data-part=troubles]', { hasText: '1 coat was put back on the clock' }).waitFor();
    expectQuiet(opened);
    await opened.close();
  },
);
