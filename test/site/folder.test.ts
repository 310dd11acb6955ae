/** A site that was built for a folder of a host: a whole build, so it stands in the slow run. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openPage, PHONE } from './browser.ts';
import { pagesOf } from './built.ts';
import { deadLinks } from './dead-links.ts';
import { startHost } from './offline-host.ts';

const FOLDER = '/some/path/';
const root = mkdtempSync(join(tmpdir(), 'folder-'));
const dist = join(root, 'dist');

beforeAll(() => {
  execFileSync(process.execPath, ['site/tools/build.ts'], {
    env: { ...process.env, OUT: dist, SITE: `https://halfdry.example${FOLDER}` },
    stdio: 'inherit',
  });
}, 600_000);
afterAll(() => rmSync(root, { recursive: true, force: true }));

it('has no dead link and none that leaves the folder', () => {
  expect(deadLinks(pagesOf(dist), dist, FOLDER).slice(0, 20)).toEqual([]);
});

it('works there without a network, and leaves the rest of the host alone', async () => {
  const host = await startHost(dist, FOLDER);
  const { page, errors, close } = await openPage({ ...PHONE, baseURL: host.base, serviceWorkers: 'allow' });
  try {
    await page.goto(FOLDER);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await page.getByText('Everything is on this device.').waitFor({ timeout: 60_000 });
    expect(
      await page.evaluate(() => navigator.serviceWorker.getRegistration().then((found) => found?.scope)),
    ).toBe(host.base + FOLDER);
    host.cutAfter(0);
    await page.getByRole('combobox').fill('bubbles');
    await page.getByRole('option').first().waitFor();
    await page.goto(`${FOLDER}defects/lap-marks/cause/`);
    await page.locator('[data-answer=yes]').tap();
    await page.waitForURL(/\/some\/path\/defects\/lap-marks\/.*-yes\/$/);
    await page.goto(`${FOLDER}r/bubbles`);
    await page.waitForURL(`**${FOLDER}defects/bubbles/`);
    expect(errors).toEqual([]);
  } finally {
    await close();
    host.close();
  }
});
