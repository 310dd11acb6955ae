/** Addresses that no longer exist, or never did. */
import { expect, it } from 'vitest';
import { nodesOf } from '#engine/index.ts';
import { known } from '../content/real/knowledge.ts';
import { itAtLength, someOf } from '../thorough.ts';
import { openPage, withoutPictures } from './browser.ts';

withoutPictures();

it('leads from a stale address on with the answers that still fit', async () => {
  const { page, close } = await openPage();
  const node = [...nodesOf(known, 'lap-marks')].find(({ stage, address }) => stage && address.length === 3);
  const [stage, first, second] = node?.address ?? [];
  const response = await page.goto(`/defects/lap-marks/${stage}/gone-question-yes/${second}/${first}/`);
  expect(response?.status()).toBe(404);
  await page.getByRole('link', { name: /Go on from here/ }).click();
  await page.waitForURL(`**/defects/lap-marks/${stage}/${first}/${second}/`);
  expect(await page.getByRole('heading', { name: 'There is no page here' }).count()).toBe(0);
  await close();
});

it.each(
  someOf(2, [
    ['a tag', '/defects/<img src=x onerror=alert(1)>/'],
    ['a script', '/defects/lap-marks/%3Cscript%3Ealert(1)%3C%2Fscript%3E-yes/'],
    ['a way out', '/defects/..%2f..%2fetc%2fpasswd/x-yes/'],
    ['names of the language', '/defects/__proto__/constructor-yes/'],
    ['a long name', `/defects/lap-marks/${'a'.repeat(3000)}-yes/`],
    ['bytes that are no text', '/%E0%A4%A'],
  ]),
)('shows the page for what is not there, and runs nothing: %s', async (_what, address) => {
  const { page, close } = await openPage();
  let alerted = false;
  page.on('dialog', (dialog) => {
    alerted = true;
    void dialog.dismiss();
  });
  const response = await page.goto(address, { waitUntil: 'networkidle' });
  expect(response?.status()).toBe(404);
  expect(await page.getByRole('heading', { name: 'There is no page here' }).count()).toBe(1);
  // But for the twelve groups, which the build wrote, no picture and no script stands there.
  expect(await page.locator('main :is(img:not(.groups img), script)').count()).toBe(0);
  expect(await page.locator('.groups a').count()).toBe(12);
  expect(alerted).toBe(false);
  await close();
});

itAtLength('sends an address without its slash to the page', async () => {
  const { page, close } = await openPage();
  await page.goto('/defects/lap-marks?from=a-friend');
  expect(new URL(page.url()).pathname).toBe('/defects/lap-marks/');
  expect(new URL(page.url()).search).toBe('?from=a-friend');
  await close();
});

it('sends a short link on', async () => {
  const { page, close } = await openPage({ javaScriptEnabled: false });
  await page.goto('/r/lap-marks/');
  await page.waitForURL('**/defects/lap-marks/');
  await close();
});
