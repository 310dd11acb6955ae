/** Runs one build in a process and a folder of its own. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export type Built = {
  readonly ms: number;
  readonly pages: number;
  /** At its most, bytes. */
  readonly memory: number;
  /** Of a page on average. */
  readonly bytes: number;
};

export type Wanted =
  /** This site with one page in so many of each kind, its knowledge so many times over. */
  | { readonly kind: 'site'; readonly oneIn: number; readonly times?: number }
  /** Trivial pages. */
  | { readonly kind: 'astro' | 'loop'; readonly pages: number; readonly bytes: number };

const sizeIn = (folder: string): number => {
  const sizes = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.html'))
    .map((name) => statSync(join(folder, name)).size);
  return Math.round(sizes.reduce((sum, size) => sum + size, 0) / sizes.length);
};

export const built = (wanted: Wanted): Built => {
  const folder = mkdtempSync(join(tmpdir(), 'halfdry-bench-'));
  try {
    const args = ['test/bench/build/one.ts', JSON.stringify(wanted), folder];
    const told = execFileSync(process.execPath, args, {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
      maxBuffer: 1e9,
    });
    const last = JSON.parse(told.trim().split('\n').at(-1) ?? '') as Omit<Built, 'bytes'>;
    return { ...last, bytes: sizeIn(join(folder, 'dist')) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
