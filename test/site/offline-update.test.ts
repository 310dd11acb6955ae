/** A newer version never mixes with the one in use, and waits until it is asked for. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { filesBelow } from '../../site/build/hash.ts';
import { writeWorker } from '../../site/tools/worker.ts';
import { openPage, PHONE } from './browser.ts';
import { copyOfSite, startHost } from './offline-host.ts';

const FIRST = 'The label on the can always wins.';
const SECOND = 'The can’s own label always wins.';
// Short links and answered questions move on by themselves and would cross the next step.
const ADDRESSES = ['/', '/defects/lap-marks/', '/remedies/', '/glossary/', '/sources/', '/clock/'];
/** Whether no other version is on its way or waits; to be asked on a page. */
const NOTHING_NEW = () =>
  navigator.serviceWorker.getRegistration().then((found) => !found?.installing && !found?.waiting);
const kept: (() => unknown)[] = [];
afterEach(async () => {
  for (const remove of kept.splice(0).reverse()) await remove();
});

let one = '';
let two = '';
const removes: (() => void)[] = [];
beforeAll(async () => {
  one = await edition(FIRST);
  two = await edition(SECOND);
});
afterAll(() => {
  for (const remove of removes) remove();
});

const edition = async (words: string): Promise<string> => {
  const { dist, remove } = copyOfSite('few');
  removes.push(remove);
  for (const name of filesBelow(dist).filter((file) => file.endsWith('.html')))
    writeFileSync(join(dist, name), readFileSync(join(dist, name), 'utf8').replace(FIRST, words));
  await writeWorker(dist);
  return dist;
};

const visit = async (folder: string, path = '/') => {
  const host = await startHost(folder, path);
  kept.push(host.close);
  const opened = await openPage({ ...PHONE, baseURL: host.base, serviceWorkers: 'allow' });
  kept.push(opened.close);
  await opened.page.goto(path);
  await opened.page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await opened.page.getByText('Everything is on this device.').waitFor({ timeout: 60_000 });
  return { host, ...opened };
};

it('keeps to one version while another is fetched, cut off, and fetched again', async () => {
  const { host, page } = await visit(one);
  const versions = async () => {
    const seen = new Set<string>();
    for (const address of ADDRESSES) {
      await page.goto(address, { waitUntil: 'commit' });
      await page.locator('footer p').first().waitFor({ state: 'attached' });
      seen.add((await page.locator('footer p').first().textContent()) ?? '');
    }
    return [...seen];
  };
  await page.goto('/defects/lap-marks/cause/');
  await page.locator('[data-answer=yes]').tap();
  await page.waitForURL(/-yes/);
  const answers = await page.evaluate(() => localStorage.getItem('halfdry.case'));
  expect(answers).toContain('answered');

  host.serve(two);
  host.cutAfter(3);
  await page.goto('/');
  await page.evaluate(() =>
    navigator.serviceWorker
      .getRegistration()
      .then((found) => found?.update())
      .catch(() => {}),
  );
  await page.waitForFunction(NOTHING_NEW);
  expect(await versions()).toEqual([FIRST]);
  await page.waitForFunction(() => customElements.get('hd-offline') !== undefined);
  expect(await page.getByRole('button', { name: /New knowledge/ }).count()).toBe(0);

  host.serve(two);
  await page.goto('/about/');
  await page.evaluate(() => navigator.serviceWorker.getRegistration().then((found) => found?.update()));
  await page.getByRole('button', { name: /New knowledge is here/ }).waitFor();
  expect(await versions()).toEqual([FIRST]);

  const other = await page.context().newPage();
  await other.goto('/glossary/');
  await page.goto('/about/');
  await page.getByRole('button', { name: /New knowledge is here/ }).click();
  await page.getByText(SECOND).waitFor();
  await other.getByText(SECOND).waitFor();
  host.cutAfter(0);
  expect(await versions()).toEqual([SECOND]);
  expect(await page.evaluate(() => localStorage.getItem('halfdry.case'))).toBe(answers);
  // Beside it lies the second copy of the clock, which the page of the clock has made.
  const caching = await page.evaluate(() => caches.keys());
  expect(caching.filter((name) => name.startsWith('halfdry /'))).toHaveLength(1);
});

it('never installs a version that came half', async () => {
  const { host, page } = await visit(one);
  const [core = ''] = filesBelow(join(two, 'offline')).filter((name) => name.startsWith('core.'));
  const whole = readFileSync(join(two, 'offline', core));
  kept.push(() => writeFileSync(join(two, 'offline', core), whole));
  writeFileSync(join(two, 'offline', core), readFileSync(join(one, 'index.html')));
  host.serve(two);
  await page.goto('/about/');
  await page.evaluate(() =>
    navigator.serviceWorker
      .getRegistration()
      .then((found) => found?.update())
      .catch(() => {}),
  );
  await page.waitForFunction(NOTHING_NEW);
  await page.goto('/glossary/');
  expect(await page.locator('footer p').first().textContent()).toBe(FIRST);
});
