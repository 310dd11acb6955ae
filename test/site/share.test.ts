/** Passing a page on: the verdict first, then an address that lasts. */
import { expect, inject, it } from 'vitest';
import { expectQuiet, openPage, PHONE } from './browser.ts';

it('copies the verdict and the address with the answers, where there is nothing to share with', async () => {
  const opened = await openPage({ ...PHONE, permissions: ['clipboard-read', 'clipboard-write'] });
  const { page } = opened;
  await page.addInitScript(() => Object.defineProperty(navigator, 'share', { value: undefined }));
  await page.goto('/defects/runs-and-sags/stage-setting/');
  const verdict =
    (await page.locator('main .verdict').first().textContent())?.replace(/\s+/g, ' ').trim() ?? '';
  await page.getByRole('button', { name: 'Copy the link' }).tap();
  await page.getByText('Copied.').waitFor();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  expect(verdict).not.toBe('');
  expect(copied.startsWith(verdict)).toBe(true);
  expect(copied.split('\n').at(-1)).toBe(`${inject('base')}/defects/runs-and-sags/stage-setting/`);
  expectQuiet(opened);
  await opened.close();
});

it('hands a flaw to the phone by its short link', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await page.addInitScript(() => {
    const share = (data: ShareData) => {
      document.documentElement.dataset['shared'] = JSON.stringify(data);
      return Promise.resolve();
    };
    Object.defineProperty(navigator, 'share', { value: share });
  });
  await page.goto('/defects/lap-marks/');
  await page.getByRole('button', { name: 'Share' }).tap();
  await page.locator('html[data-shared]').waitFor();
  const shared = JSON.parse((await page.locator('html').getAttribute('data-shared')) ?? 'null');
  expect(shared).toEqual({ text: 'Lap marks', url: `${inject('base')}/r/lap-marks/` });
  expectQuiet(opened);
  await opened.close();
});
