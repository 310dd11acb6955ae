/**
 * From saving a flaw's file to seeing it in a browser: the live preview of a copy of the project, and a real Chromium. The
 * goal is a second on two cores. A machine that is busy with more takes longer for any page, so that a mere reload of the
 * same page is timed in turn, and stands beside it.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { afterAll, expect, inject, it } from 'vitest';
import { BROWSER_ARGS } from '../site/browser.ts';

const FLAW = 'lap-marks';
const EDITS = 10;
const GOAL_MS = 1000;
/** How much longer than a mere reload a saved file may take where the machine is too busy for the goal. */
const RELOADS = 2;

const root = process.cwd();
const copy = mkdtempSync(join(tmpdir(), 'halfdry-preview-'));
let server: ChildProcess | undefined;
afterAll(async () => {
  const gone = server && new Promise((done) => server?.on('exit', done));
  server?.kill();
  await gone;
  rmSync(copy, { recursive: true, force: true });
});

const freePort = (): Promise<number> =>
  new Promise((done) => {
    const probe = createServer().listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => done(typeof address === 'object' && address ? address.port : 0));
    });
  });

const started = async (): Promise<string> => {
  for (const part of ['content', 'engine', 'site', 'astro.config.mjs', 'package.json', 'tsconfig.json'])
    cpSync(join(root, part), join(copy, part), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
  const port = await freePort();
  const astro = join(root, 'node_modules/astro/bin/astro.mjs');
  server = spawn(process.execPath, [astro, 'dev', '--port', String(port), '--host', '127.0.0.1'], {
    cwd: copy,
    stdio: 'ignore',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
  });
  const base = `http://127.0.0.1:${port}`;
  for (;;) {
    const answered = await fetch(`${base}/preview/${FLAW}/`).catch(() => undefined);
    if (answered?.ok) return base;
    await new Promise((again) => setTimeout(again, 500));
  }
};

const median = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[times.length >> 1] ?? 0;

it('is a second, or two reloads of a busy machine', { timeout: 600_000 }, async () => {
  const base = await started();
  const path = inject('browser');
  const browser = await chromium.launch(
    path ? { executablePath: path, args: BROWSER_ARGS } : { channel: 'chrome', args: BROWSER_ARGS },
  );
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    await page.goto(`${base}/preview/${FLAW}/`);
    const file = join(copy, `content/defects/${FLAW}.mdx`);
    const was = readFileSync(file, 'utf8');
    const shown = (name: string) =>
      page.waitForFunction(
        (wanted) =>
          document.querySelector('h1')?.textContent === wanted &&
          document
            .querySelector('iframe')
            ?.contentDocument?.querySelector('h1')
            ?.textContent?.includes(wanted),
        name,
        { timeout: 60_000, polling: 20 },
      );
    const saved: number[] = [];
    const reloaded: number[] = [];
    // The first edits warm what the first visit left cold.
    for (let edit = -2; edit < EDITS; edit++) {
      const name = `Lap marks, take ${edit + 3}`;
      const begun = performance.now();
      writeFileSync(file, was.replace(/^name: .*$/m, `name: "${name}"`));
      await shown(name);
      const seen = performance.now() - begun;
      // The check that ran beside it, and a second reload that may follow, are over.
      await page.waitForTimeout(1500);
      const again = performance.now();
      await page.reload({ waitUntil: 'commit' });
      await shown(name);
      if (edit < 0) continue;
      saved.push(seen);
      reloaded.push(performance.now() - again);
      await page.waitForTimeout(500);
    }
    const [toSee, reload] = [median(saved), median(reloaded)];
    console.log(
      `saved and seen after ${toSee.toFixed(0)} ms (${saved.map((ms) => ms.toFixed(0)).join(', ')}); a mere reload takes ${reload.toFixed(0)} ms`,
    );
    expect(toSee).toBeLessThanOrEqual(Math.max(GOAL_MS, RELOADS * reload));
  } finally {
    await browser.close();
  }
});
