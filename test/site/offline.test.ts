/** One visit, and then no network: everything opens, also what was never looked at. */
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { nodesOf } from '#engine/index.ts';
import { writeRedirects } from '../../site/tools/redirects.ts';
import { writeWorker } from '../../site/tools/worker.ts';
import { known } from '../content/real/knowledge.ts';
import { someOf, THOROUGH } from '../thorough.ts';
import { type Opened, openPage, PHONE } from './browser.ts';
import { copyOfSite, type Host, startHost } from './offline-host.ts';

let host: Host;
let opened: Opened;
let remove: () => void;

beforeAll(async () => {
  const copy = copyOfSite(THOROUGH ? 'whole' : 'few');
  remove = copy.remove;
  writeRedirects(copy.dist, { 'defect/overlap-lines': 'lap-marks' }, '/');
  await writeWorker(copy.dist);
  host = await startHost(copy.dist);
  opened = await openPage({ ...PHONE, baseURL: host.base, serviceWorkers: 'allow' });
  const { page } = opened;
  const began = performance.now();
  await page.goto('/');
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  const words = performance.now() - began;
  await page.getByText('Everything is on this device.').waitFor({ timeout: 60_000 });
  const all = performance.now() - began;
  const packs = readdirSync(join(copy.dist, 'offline'));
  const bytes = packs.reduce((sum, name) => sum + statSync(join(copy.dist, 'offline', name)).size, 0);
  console.log(
    `offline: ${packs.length} packs, ${(bytes / 1e6).toFixed(2)} MB; ` +
      `words after ${Math.round(words)} ms, everything after ${Math.round(all)} ms`,
  );
  host.cutAfter(0);
});
afterAll(async () => {
  await opened?.close();
  host?.close();
  remove?.();
});

const deepest = (defect: string): string => {
  const all = [...nodesOf(known, defect)].map(({ address }) => address);
  return `/defects/${defect}/${all.sort((a, b) => b.length - a.length)[0]?.join('/')}/`;
};
const deepestSeen = readdirSync('dist/see', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('index.html'))
  .sort((a, b) => b.split('/').length - a.split('/').length)[0]
  ?.replace('index.html', '');

it.each(
  someOf(2, [
    ['a question deep in a tree', deepest('cloudy-film'), undefined],
    ['a repair', `/remedies/${known.remedies[0]?.id}/`, known.remedies[0]?.name],
    ['the coat clock', '/clock/', undefined],
    ['a short link, without its slash', '/r/lap-marks', 'Lap marks'],
    ['another flaw’s', deepest('bubbles'), undefined],
    ['a flaw', '/defects/lap-marks/', 'Lap marks'],
    ['deep in the search for the flaw', `/see/${deepestSeen}`, undefined],
    ['an address that moved', '/r/overlap-lines/', 'Lap marks'],
    ['the glossary, with a query', '/glossary/?from=a-friend', 'Words of the trade'],
    ['the data', '/data/', undefined],
  ]),
)('opens %s whole', async (_what, address, heading) => {
  const { page } = opened;
  const before = host.answered();
  await page.goto(address);
  if (heading) await page.getByRole('heading', { level: 1, name: heading }).waitFor();
  await expect.poll(() => page.locator('h1').count()).toBe(1);
  expect(await page.getByRole('heading', { name: 'There is no page here' }).count()).toBe(0);
  const broken = await page.evaluate(async () => {
    const pictures = [...document.querySelectorAll('img')];
    for (const picture of pictures) picture.loading = 'eager';
    await Promise.allSettled(pictures.map((picture) => picture.decode()));
    return pictures.filter((picture) => !picture.naturalWidth).map((picture) => picture.src);
  });
  expect(broken).toEqual([]);
  await page.waitForFunction(() => customElements.get('hd-offline') !== undefined);
  expect(host.answered()).toBe(before);
});

it('finds by words', async () => {
  const { page } = opened;
  await page.goto(`/search/?q=${encodeURIComponent('bubbels in my poly')}`);
  const first = page.locator('hd-results a').first();
  await first.waitFor();
  await expect.poll(() => first.getAttribute('href')).toBe('/defects/bubbles/');
});

it('leads on from an address that never was, with what still fits', async () => {
  const { page } = opened;
  await page.goto('/defects/lap-marks/gone-question-yes/');
  await page.getByRole('heading', { name: 'There is no page here' }).waitFor();
  await page.getByRole('link', { name: /Go on from here/ }).waitFor();
});

it('leads on from a question of a flaw that has moved', async () => {
  const { page } = opened;
  await page.goto('/defects/overlap-lines/stage-recoatable/gone-question-yes/');
  const on = page.getByRole('link', { name: /Go on from here/ });
  await on.waitFor();
  expect(await on.getAttribute('href')).toMatch(/^\/defects\/lap-marks\//);
});

it('says that all is kept, and breaks no rule of its own policy', async () => {
  const { page, errors } = opened;
  await page.goto('/about/');
  await page.getByText('Everything is on this device.').waitFor();
  // A page that is not there is meant to answer 404.
  expect(errors.filter((text) => !/404/.test(text))).toEqual([]);
});
