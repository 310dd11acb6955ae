/** What the tests of the job cards do on the page, and what they find in the browser's store. */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { JobCard } from '#engine/model/job-card.ts';
import type { Listed } from '../../site/client/jobs/store/listed.ts';
import { codeOf } from '../bundle.ts';

export const JOBS = '/jobs/';

/** Waits as long as a busy machine may take. */
export const soon = <T>(look: () => Promise<T> | T) => expect.poll(look, { timeout: 20_000 });

/** The store of the cards for such a page. */
export const storeCode = (): Promise<string> => codeOf('site/client/jobs/store/index.ts', 'store');

/** Says of a new piece what a card must know. */
export const sayPiece = async (page: Page, base = 'chalk-paint'): Promise<void> => {
  for (const [name, value] of [
    ['kind', 'furniture'],
    ['base', base],
    ['tone', 'dark'],
  ] as const)
    await page.locator(`.about [name=${name}]`).selectOption(value);
};

export const makeCard = async (page: Page, name = 'Navy dresser'): Promise<string> => {
  await page.goto(`${JOBS}#new`);
  await page.getByLabel('Name of the piece').fill(name);
  await sayPiece(page);
  await page.locator('.about [name=product]').selectOption('water-based-polyurethane');
  await page.locator('.about [name=age][value=none]').check();
  await page.getByRole('button', { name: 'Make the card' }).click();
  await page.getByRole('button', { name: 'Lay a coat' }).waitFor();
  return new URL(page.url()).hash.replace('#card-', '');
};

/** Opens the fields of the piece on its card, with those that are folded away among them. */
export const openPiece = (page: Page): Promise<void> =>
  page.locator('.piece').evaluate((piece) => {
    for (const fold of [piece, ...piece.querySelectorAll('.more')]) fold.setAttribute('open', '');
  });

/** Opens what can be done with a whole card as paper and files. */
export const openFiles = (page: Page): Promise<void> =>
  page.locator('.files').evaluate((fold) => fold.setAttribute('open', ''));

/** Lays the next coat, also one that is refused for such a reason, since it lies already. */
export const layCoat = async (
  page: Page,
  tool = 'brush',
  refused?: RegExp,
  begin = 'Lay a coat',
): Promise<void> => {
  await page.getByRole('button', { name: begin }).waitFor();
  const before = await page.locator('.laid > li').count();
  await page.getByRole('button', { name: begin }).click();
  await page.locator('.lay-coat [data-part=more]').evaluate((more) => more.setAttribute('open', ''));
  await page.locator(`.lay-coat [name=tool][value=${tool}]`).check();
  await page.getByRole('button', { name: 'Coat laid: start the clock' }).click();
  if (refused) {
    await soon(() => page.getByRole('dialog').innerText()).toMatch(refused);
    await answer(page, 'It lies already: note it');
  }
  await soon(() => page.locator('.laid > li').count()).toBe(before + 1);
  await page.locator('.told', { hasText: `Coat ${before + 1} is on the card.` }).waitFor();
};

/** Answers the question that stands on the page, and waits until it has gone. */
export const answer = async (page: Page, name: string): Promise<void> => {
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name }).click();
  await dialog.waitFor({ state: 'hidden' });
};

type Store = 'cards' | 'summaries' | 'photos';

/** All records of a store, past the page's own code. */
export const recordsIn = <T>(page: Page, store: Store): Promise<T[]> =>
  page.evaluate(
    (name) =>
      new Promise<never[]>((done, failed) => {
        const opening = indexedDB.open('halfdry');
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const all = opening.result.transaction(name).objectStore(name).getAll();
          all.onsuccess = () => {
            opening.result.close();
            done(all.result as never[]);
          };
        };
      }),
    store,
  );
export const cardsIn = (page: Page): Promise<JobCard[]> => recordsIn<JobCard>(page, 'cards');
export const summariesIn = (page: Page): Promise<Listed[]> => recordsIn<Listed>(page, 'summaries');

/** Puts records into a store, past the page's own code. */
export const putRecords = (page: Page, store: Store, records: readonly unknown[]): Promise<void> =>
  page.evaluate(
    ({ name, all }) =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open('halfdry');
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const change = opening.result.transaction(name, 'readwrite');
          for (const record of all) change.objectStore(name).put(record);
          change.oncomplete = () => {
            opening.result.close();
            done();
          };
          change.onabort = () => failed(change.error);
        };
      }),
    { name: store, all: records as unknown[] },
  );
