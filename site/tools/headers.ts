import { writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** What every answer carries. The rest of the policy stands in each page; a page can not say who may frame it. */
export const HEADERS: Readonly<Record<string, string>> = {
  'Content-Security-Policy': "frame-ancestors 'none'",
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'strict-origin-when-cross-origin',
  'Permissions-Policy': 'camera=(), geolocation=(), microphone=(), payment=(), usb=()',
};

const FOREVER = 'public, max-age=31536000, immutable';

/** Files with the hash of their content in their name never change; all else is asked for anew. */
export const cacheControl = (path: string): string =>
  /(^|\/)(_astro|offline)\//.test(path) ? FOREVER : 'no-cache';

/** Writes `_headers`, which several static hosts read. `base` is the folder of the site, with both slashes. */
export const writeHeaders = (dist: string, base: string): void => {
  const block = (path: string, headers: Readonly<Record<string, string>>) =>
    [base + path, ...Object.entries(headers).map(([name, value]) => `  ${name}: ${value}`)].join('\n');
  // Where two blocks fit, hosts join values of one name; so `no-cache` is not set for everything.
  const blocks = [
    block('*', HEADERS),
    ...['_astro/*', 'offline/*'].map((path) => block(path, { 'Cache-Control': FOREVER })),
    ...['', '*/', 'sw.js'].map((path) => block(path, { 'Cache-Control': 'no-cache' })),
  ];
  writeFileSync(join(dist, '_headers'), `${blocks.join('\n')}\n`);
  // A host that runs the files through its own generator would drop the folder `_astro`.
  writeFileSync(join(dist, '.nojekyll'), '');
};
