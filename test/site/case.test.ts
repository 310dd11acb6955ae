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
  await expect.poll(() => page.getByRole('heading', { level: 1 }).textContent()).toBe(first);
  await page.goto('/');
  await page.goto(START);
  await page.waitForURL(second);
  expectQuiet(opened);
  await opened.close();
});

/** Hairs in a wet coat: whether it was laid just now can't be told; that no bit can be gripped settles it all the same. */
it.each(someOf(1, [true, false]))(
  'asks on after can’t tell, and tells what to do; script %s',
  async (javaScriptEnabled) => {
    const opened = await openPage({ ...PHONE, javaScriptEnabled });
    const { page } = opened;
    const at = '/defects/hairs-and-dust/stage-wet/';
    const heading = () => page.getByRole('heading', { level: 1 }).textContent();
    await page.goto(at);
    const first = await heading();
    await page.locator('[data-answer=unsure]').tap();
    await page.waitForURL(`**${at}just-laid-unsure/`);
    expect(await heading()).not.toBe(first);
    // The check stays at hand, folded, with a way on for either answer.
    const doubt = page.locator('[data-part=doubt]');
    expect(await doubt.locator('summary').textContent()).toBe(`You could not tell: ${first}`);
    expect(await doubt.locator('a').first().isVisible()).toBe(false);
    await doubt.locator('summary').tap();
    const ways = await doubt
      .locator('a')
      .evaluateAll((links) => links.map((link) => link.getAttribute('href')));
    expect(ways).toEqual([`${at}just-laid-yes/`, `${at}just-laid-no/`]);
    await page.locator('[data-answer=no]').tap();
    await page.waitForURL(`**${at}just-laid-unsure/easy-to-grip-no/`);
    await expect.poll(() => page.getByRole('heading', { name: 'Hands off' }).count()).toBe(1);
    await page.getByText('What would tell the cause').tap();
    await page.getByText('What to do now is the same either way.').waitFor();

    // What nothing settles is decided by a check: by when, and what either answer means, in view at once.
    await page.goBack();
    await page.locator('[data-answer=unsure]').tap();
    await page.waitForURL(`**${at}just-laid-unsure/easy-to-grip-unsure/`);
    await page.getByRole('heading', { name: 'Leave it for now' }).waitFor();
    const check = page.locator('.sure');
    await check.getByText('Only while the film still flows.').waitFor();
    await expect
      .poll(() => check.locator('a strong').allTextContents())
      .toEqual([
        // Hands hang on what it turns out to be, so that is said in place of one thing to do.
        expect.stringMatching(/^It may be: .+; or /),
        'Then: Hands off.',
      ]);
    await check.locator('a').last().tap();
    await page.getByRole('heading', { name: 'Hands off' }).waitFor();
    expectQuiet(opened);
    await opened.close();
  },
);

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
)('drops what it cannot read in the storage: %s', async (stored) => {
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
