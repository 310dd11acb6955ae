/**
 * How many sheets of paper each page takes, US Letter and ISO A4, in a real browser: no last sheet that gets lost, no
 * line of a tree that hangs in the air, and a code that leads back to the very page.
 */
import type { Page } from 'playwright-core';
import { expect, it, vi } from 'vitest';
import { someOf } from '../thorough.ts';
import { openPage, withoutPictures } from './browser.ts';
import { builtPages } from './built.ts';
import { cellsOf, readQr } from './read-qr.ts';
import { sheetsIn } from './read-sheets.ts';

withoutPictures();

const PAPERS = ['Letter', 'A4'] as const;
/** Below this a last sheet is mostly white. */
const QUARTER = 0.25;
const MOST = 2;
/**
 * So many of a kind stand whole on one sheet. Of repairs 49 of 100: what would have to be set in 8 pt to stand on one is
 * set in type for the bench, on two.
 */
const ON_ONE: Readonly<Record<string, number>> = { repair: 0.45, flaw: 0.98, rule: 1 };

const addressesOf = (shape: RegExp): readonly string[] =>
  builtPages()
    .filter(({ address, html }) => shape.test(address) && !html.includes('http-equiv="refresh"'))
    .map(({ address }) => address);

it.each([
  ['repair', /^\/remedies\/[^/]+\/$/],
  ['flaw', /^\/defects\/[^/]+\/$/],
  ['rule', /^\/safety\/[^/]+\/$/],
  ['lesson', /^\/learn\/[^/]+\/$/],
])('prints a %s on two sheets at most, and no last one is nearly empty', async (kind, shape) => {
  const { page, close } = await openPage();
  const all = addressesOf(shape);
  expect(all.length).toBeGreaterThan(20);
  const wrong: string[] = [];
  let onOne = 0;
  const looked = someOf(4, all);
  for (const address of looked) {
    await page.goto(address);
    for (const format of PAPERS) {
      const sheets = sheetsIn(await page.pdf({ format }));
      const last = sheets.at(-1) ?? 0;
      const name = `${address} ${format}`;
      onOne += Number(sheets.length === 1);
      if (sheets.length > MOST) wrong.push(`${name}: ${sheets.length} sheets`);
      if (sheets.length > 1 && last < QUARTER) wrong.push(`${name}: last to ${last.toFixed(2)}`);
    }
  }
  await close();
  expect(wrong).toEqual([]);
  expect(onOne / looked.length / PAPERS.length).toBeGreaterThanOrEqual(ON_ONE[kind] ?? 0);
});

it.each([
  ['/learn/', 1],
  ['/safety/', 2],
  ['/safety/emergency/', 1],
  ['/glossary/', 3],
  ['/defects/', 3],
  ['/', 1],
])('prints %s with its code on %i sheets at most', async (address, most) => {
  const { page, close } = await openPage();
  const came = page.waitForResponse(/paper-code/);
  await page.goto(address);
  await came;
  await expect.poll(async () => new URL(await codeOn(page)).pathname).toBe(address);
  for (const format of PAPERS)
    expect(sheetsIn(await page.pdf({ format })).length, format).toBeLessThanOrEqual(most);
  await close();
});

it('breaks no list of words into columns within a column', async () => {
  const { page, close } = await openPage();
  await page.emulateMedia({ media: 'print' });
  await page.goto('/glossary/');
  const columnsOf = (lists: readonly Element[]) => lists.map((list) => getComputedStyle(list).columnCount);
  expect(await page.locator('.letter-columns').evaluateAll(columnsOf)).toEqual(['3']);
  expect(new Set(await page.locator('.letter-columns .index').evaluateAll(columnsOf))).toEqual(
    new Set(['auto']),
  );
  await close();
});

/** What stands before each line of the tree on paper, and how wide its own rail is. */
const linesOf = (lines: readonly Element[]) =>
  lines.map((line) => ({
    number: getComputedStyle(line, '::before').content.replaceAll('"', '').trim(),
    rail: getComputedStyle(line).borderLeftWidth,
  }));

it('prints a tree as a key: each answer names its question, each arrow leads to one, and nothing hangs on a rail', async () => {
  const { page, close } = await openPage();
  await page.emulateMedia({ media: 'print' });
  const all = addressesOf(/^\/defects\/[^/]+\/$/);
  for (const address of new Set(['/defects/cloudy-film/', '/defects/wax-in-the-grain/', ...someOf(2, all)])) {
    await page.goto(address);
    const answers = await page.locator('hd-tree li').evaluateAll(linesOf);
    const questions = await page.locator('hd-tree [data-n]:not(li)').evaluateAll(linesOf);
    expect(questions.map(({ number }) => number)).toEqual(
      questions.map((_, at) => (at ? `→ ${at + 1}` : '1')),
    );
    expect(answers.map(({ number }) => Number(number)).sort((a, b) => a - b)).toEqual(
      questions.flatMap((_, at) => [at + 1, at + 1]),
    );
    expect(new Set(answers.map(({ rail }) => rail))).toEqual(new Set(['0px']));
  }
  await close();
});

/** The text of the one code that is on the paper. */
const codeOn = async (page: Page): Promise<string> => {
  // What a browser says to a page as it prints it.
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await page.emulateMedia({ media: 'print' });
  const code = page.locator('.qr:visible');
  // The part that draws it may have come and not run yet: then who asks asks again.
  await code.waitFor({ timeout: 500 });
  expect(await code.count()).toBe(1);
  const [, , , size] = ((await code.locator('svg').getAttribute('viewBox')) ?? '').split(' ').map(Number);
  const path = (await code.locator('path').getAttribute('d')) ?? '';
  await page.emulateMedia({ media: null });
  return readQr(cellsOf(size ?? 0, path));
};

it.each([
  '/safety/',
  '/safety/oily-rags/',
  '/safety/emergency/',
  '/first-coat/',
  '/which-coat/',
  '/jobs/',
  '/defects/blush/cause/',
])('prints a code on %s that leads back to it, once', async (address) => {
  const { page, close } = await openPage();
  // The part that draws it comes late.
  const came = page.waitForResponse(/paper-code/);
  await page.goto(address);
  await came;
  await expect.poll(async () => new URL(await codeOn(page)).pathname).toBe(address);
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await expect.poll(() => page.locator('.qr').count()).toBe(1);
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await expect.poll(() => page.locator('.qr').count()).toBe(0);
  await close();
});

it('prints on a page that hands over to another flaw the code of that flaw', async () => {
  const { page, close } = await openPage();
  const came = page.waitForResponse(/paper-code/);
  await page.goto('/defects/cloudy-film/cleans-up-with-water-yes/lines-follow-sanding-yes/');
  await came;
  const to = await page.locator('.handover .answers a').first().getAttribute('href');
  expect(to).toContain('sanding-scratches');
  await expect.poll(async () => new URL(await codeOn(page)).pathname).toBe(to);
  await close();
});

it('prints short links of flaws and repairs, and of a lesson its address', async () => {
  const { page, close } = await openPage();
  for (const [address, to] of [
    ['/defects/blush/', '/r/blush/'],
    ['/remedies/shave-the-run/', '/r/shave-the-run/'],
    ['/learn/wet-edge/', '/learn/wet-edge/'],
  ] as const) {
    await page.goto(address);
    await expect.poll(async () => new URL(await codeOn(page)).pathname).toBe(to);
  }
  await close();
});

it('prints every code for the host that the site was built to stand on, whatever host it is read from', async () => {
  const { page, close } = await openPage();
  const hosts = new Set<string>();
  for (const address of ['/defects/blush/', '/learn/wet-edge/', '/safety/oily-rags/', '/first-coat/']) {
    await page.goto(address, { waitUntil: 'networkidle' });
    hosts.add(await vi.waitFor(async () => new URL(await codeOn(page)).origin, { timeout: 10_000 }));
    // What an address on paper begins with is the same.
    const host = await page.locator('html').evaluate((root) => root.style.getPropertyValue('--host'));
    hosts.add(`https://${JSON.parse(host)}`);
  }
  expect(hosts.size).toBe(1);
  expect(hosts).not.toContain(new URL(page.url()).origin);
  await close();
});

it('tears no caution of a repair between columns or sheets, and sets none in less than 8 pt', async () => {
  const { page, close } = await openPage();
  await page.emulateMedia({ media: 'print' });
  const styles = (selector: string) =>
    page.locator(selector).evaluateAll((found) =>
      found.map((one) => {
        const { breakInside, display, fontSize } = getComputedStyle(one);
        return { breakInside, display, points: Math.round(Number.parseFloat(fontSize) * 7.5) / 10 };
      }),
    );
  const all = addressesOf(/^\/remedies\/[^/]+\/$/);
  for (const address of new Set(['/remedies/wait-for-the-core/', ...someOf(8, all)])) {
    await page.goto(address);
    const whole = await styles('.procedure :is(.line, .caution.stop), .may-start dl > div');
    const read = await styles('.procedure .line, .caution.stop p:not(.label), .may-start dd');
    expect(whole.length, address).toBeGreaterThan(0);
    expect(whole.filter(({ breakInside }) => breakInside !== 'avoid').length, address).toBe(0);
    // What runs on in a line is no box, and would be torn all the same.
    expect(whole.filter(({ display }) => display === 'inline').length, address).toBe(0);
    expect(read.filter(({ points }) => points < 8).length, address).toBe(0);
  }
  await close();
});

it.each([
  ['in the morning', '2026-11-30T14:00:00Z'],
  // Its first coat dries through a night, of which the sheet tells.
  ['late in the day', '2026-11-30T21:30:00Z'],
])('prints of a plan that begins %s its code, its name, and a box before each step', async (_, now) => {
  const { page, close } = await openPage();
  await page.clock.setFixedTime(new Date(now));
  await page.goto('/schedule/');
  await page.getByLabel('Is there older paint or varnish on it?').selectOption('none');
  await page.getByRole('button', { name: 'Plan it' }).click();
  await page.locator('.plan .verdict').waitFor();
  const { pathname, hash } = new URL(page.url());
  await expect
    .poll(async () => {
      const to = new URL(await codeOn(page));
      return to.pathname + to.hash;
    })
    .toBe(pathname + hash);
  expect(hash.length).toBeGreaterThan(100);
  await page.emulateMedia({ media: 'print' });
  expect(await page.getByRole('heading', { name: 'Finishing schedule' }).isVisible()).toBe(true);
  const boxes = await page
    .locator('.plan .steps li > b:first-of-type')
    .evaluateAll((names) => names.map((name) => getComputedStyle(name, '::before').content));
  expect(boxes.length).toBeGreaterThan(5);
  expect(new Set(boxes.map((box) => box.includes('☐')))).toEqual(new Set([true]));
  await page.emulateMedia({ media: null });
  for (const format of PAPERS) expect(sheetsIn(await page.pdf({ format }))).toHaveLength(1);
  await close();
});

it('names the page at the head of each sheet after the first', async () => {
  const { page, close } = await openPage();
  await page.goto('/defects/cloudy-film/');
  // The part that names it comes late: then who asks asks again.
  const name = () =>
    page.locator('html').evaluate((root) => {
      dispatchEvent(new Event('beforeprint'));
      return root.style.getPropertyValue('--sheet');
    });
  await expect.poll(name).toBe(JSON.stringify(await page.locator('h1').innerText()));
  await close();
});

it('says on the sheet of a coat when it was printed: what is told for today is read tomorrow', async () => {
  const { page, close } = await openPage();
  await page.clock.setFixedTime(new Date(2026, 10, 30, 9, 0));
  await page.goto('/clock/');
  await page.locator('.go').click();
  await page.locator('.on-clock .verdict').waitFor();
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await page.emulateMedia({ media: 'print' });
  const says = await page
    .locator('.on-clock .verdict')
    .evaluate((verdict) => getComputedStyle(verdict, '::after').content);
  expect(says).toContain('Printed Mon, Nov 30, 2026');
  await close();
});
