/**
 * One build in a process of its own: `one.ts <what is wanted, as JSON> <folder>`. Prints its milliseconds, pages and
 * memory.
 */
import { mkdirSync, readdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { build } from 'astro';
import { fewerPages } from './fewer.ts';
import type { Wanted } from './run.ts';

const [asked = '', folder = ''] = process.argv.slice(2);
const wanted = JSON.parse(asked) as Wanted;
const out = join(folder, 'dist');
const { pages: many, bytes: size } = wanted.kind === 'site' ? { pages: 0, bytes: 0 } : wanted;
// As the site's own build has it.
process.env['NODE_ENV'] = 'production';
process.env['ASTRO_TELEMETRY_DISABLED'] = '1';

const words = (page: number): string => `Page ${page}. `.repeat(Math.ceil(size / 8)).slice(0, size - 120);

/** Trivial pages of the same size, each its own text, without a style or a script. */
const bareAstro = async (): Promise<void> => {
  const root = join(folder, 'bare');
  mkdirSync(join(root, 'src/pages'), { recursive: true });
  symlinkSync(resolve('node_modules'), join(root, 'node_modules'));
  writeFileSync(join(root, 'package.json'), '{ "type": "module" }');
  writeFileSync(
    join(root, 'src/pages/[page].astro'),
    `---
export const getStaticPaths = () => Array.from({ length: ${many} }, (_, page) => ({ params: { page: String(page) } }));
const page = Number(Astro.params.page);
const words = ${words.toString().replace(': number', '').replace(': string', '').replaceAll('size', String(size))};
---
<html lang="en"><head><meta charset="utf-8"><title>Page {page}</title></head><body><p>{words(page)}</p></body></html>`,
  );
  await build({ root, configFile: false, logLevel: 'error', outDir: out });
};

const loop = (): void => {
  for (let page = 0; page < many; page++) {
    mkdirSync(join(out, String(page)), { recursive: true });
    writeFileSync(
      join(out, String(page), 'index.html'),
      `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>Page ${page}</title></head><body><p>${words(page)}</p></body></html>`,
    );
  }
};

const began = performance.now();
if (wanted.kind === 'site')
  await build({ logLevel: 'error', outDir: out, vite: fewerPages(wanted.oneIn, wanted.times) });
else if (wanted.kind === 'astro') await bareAstro();
else loop();
const ms = performance.now() - began;
const pages = readdirSync(out, { recursive: true, encoding: 'utf8' }).filter((name) =>
  name.endsWith('.html'),
).length;
console.log(`\n${JSON.stringify({ ms, pages, memory: 1024 * process.resourceUsage().maxRSS })}`);
