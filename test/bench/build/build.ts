/** Building pages: this site, beside bare Astro with as many trivial pages of the same size, and a loop over a template. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Measured } from '../figures.ts';
import type { Row } from '../row.ts';

/** One page in so many of each kind: some 500, some 2,000, and all. */
const STEPS = [15, 4, 1];

type Built = { readonly ms: number; readonly pages: number; readonly memory: number };

/** Bytes of a page of a build, on average. */
const sizeIn = (folder: string): number => {
  const sizes = readdirSync(join(folder, 'dist'), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.html'))
    .map((name) => statSync(join(folder, 'dist', name)).size);
  return Math.round(sizes.reduce((sum, size) => sum + size, 0) / sizes.length);
};

const one = (kind: 'site' | 'astro' | 'loop', many: number, bytes: number, folder: string): Built => {
  const args = ['test/bench/build/one.ts', kind, String(many), String(bytes), folder];
  const told = execFileSync(process.execPath, args, {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  return JSON.parse(told.trim().split('\n').at(-1) ?? '') as Built;
};

const inFolder = <T>(work: (folder: string) => T): T => {
  const folder = mkdtempSync(join(tmpdir(), 'halfdry-bench-'));
  try {
    return work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

const rowsFor = (step: number): readonly Row[] => {
  const { site, bytes } = inFolder((folder) => ({
    site: one('site', step, 0, folder),
    bytes: sizeIn(folder),
  }));
  const bare = inFolder((folder) => one('astro', site.pages, bytes, folder));
  const loop = inFolder((folder) => one('loop', site.pages, bytes, folder));
  const line = (what: string, name: string, built: Built, of: keyof Built, most?: number): Row => {
    const ratio = built[of] / bare[of];
    return {
      what,
      name,
      value: of === 'ms' ? built.ms * 1e6 : built[of],
      unit: of === 'ms' ? 'ns' : 'bytes',
      ...(!what && { ratio: [ratio, ratio, ratio] as const }),
      ...(most !== undefined && { goal: { most, of: 'ratio' as const } }),
    };
  };
  const pages = site.pages.toLocaleString('en-US');
  const kB = Math.round(bytes / 1e3);
  return [
    line(`${pages} pages of ${kB} kB, time`, 'bare Astro, trivial pages', bare, 'ms'),
    line('', 'this site, pictures left out', site, 'ms', 1.5),
    line('', 'a loop over a template', loop, 'ms'),
    line(`${pages} pages of ${kB} kB, memory`, 'bare Astro, trivial pages', bare, 'memory'),
    line('', 'this site, pictures left out', site, 'memory', 1.5),
    line('', 'a loop over a template', loop, 'memory'),
  ];
};

export const builds = async (): Promise<Measured> => ({ rows: STEPS.flatMap(rowsFor) });
