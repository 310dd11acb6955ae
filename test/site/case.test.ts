/** The case kept in the browser: answers are not asked for again, can be taken back, and are not needed. */
import { expect, it } from 'vitest';
import { itAtLength, someOf } from '../thorough.ts';
import { expectQuiet, openPage, PHONE, withoutPictures } from './browser.ts';

withoutPictures();

const START = '/defects/lap-marks/cause/';
const KEY = 'halfdry.case';

it('does not ask again what was answered, but shows it to someone who goes back', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await page.goto(START);
  const first = await page.getByRole('heading', { level: 1 }).textContent();
  await page.locator('[data-answer=no]').tap();
  await page.waitForURL((url) => url.pathname !== START);
  const second = page.url();
  await page.goBack();
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe(first);
  await page.goto('/');
  await page.goto(START);
  await page.waitForURL(second);
  expectQuiet(opened);
  await opened.close();
});

itAtLength('takes an answer back with one tap', async () => {
  const { page, close } = await openPage(PHONE);
  await page.goto(START);
  await page.locator('[data-answer=no]').tap();
  await page.waitForURL((url) => url.pathname !== START);
  await page.locator('.trail [data-ask]').tap();
  await page.waitForURL(`**${START}`);
  await page.waitForLoadState('networkidle');
  expect(new URL(page.url()).pathname).toBe(START);
  await close();
});

itAtLength('forgets all answers with one tap', async () => {
  const { page, close } = await openPage(PHONE);
  await page.goto(START);
  await page.locator('[data-answer=no]').tap();
  await page.waitForURL((url) => url.pathname !== START);
  await page.getByRole('button', { name: /Start a new case/ }).tap();
  await page.waitForURL((url) => url.pathname === '/');
  expect(await page.evaluate((key) => localStorage.getItem(key), KEY)).toBeNull();
  await close();
});

it.each(
  someOf(1, [
    '[]',
    '{"version":2,"facts":{}}',
    '{',
    '{"version":1,"facts":{"just-laid":{"value":{},"how":"answered"}}}',
  ]),
)('drops what it can not read in the storage: %s', async (stored) => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await page.addInitScript(([key, value]) => localStorage.setItem(key, value), [KEY, stored] as const);
  await page.goto(START, { waitUntil: 'networkidle' });
  expect(new URL(page.url()).pathname).toBe(START);
  expectQuiet(opened);
  await opened.close();
});

it.each(
  someOf(1, [
    [
      'denied',
      () =>
        Object.defineProperty(window, 'localStorage', {
          get: () => {
            throw new DOMException('denied', 'SecurityError');
          },
        }),
    ],
    [
      'full',
      () => {
        Storage.prototype.setItem = () => {
          throw new DOMException('full', 'QuotaExceededError');
        };
      },
    ],
  ]),
)('says so and goes on where storage is %s', async (_name, refuse) => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await page.addInitScript(refuse);
  await page.goto(START);
  await page.getByRole('status').getByText('keeps no notes').waitFor();
  await page.locator('[data-answer=no]').tap();
  await page.waitForURL((url) => url.pathname !== START);
  expectQuiet(opened);
  await opened.close();
});
