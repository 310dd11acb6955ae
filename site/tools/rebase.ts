import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesBelow } from '../build/hash.ts';

const TAG = /<[a-z][^<>]*>/g;
const LINK = /(\s(?:href|src|action|poster|data-clock)=")\/(?!\/)/g;
const SOURCES = /(\ssrcset=")([^"]*)/g;
const REFRESH = /(content="0; ?url=)\/(?!\/)/g;

/** A page whose links lead below `base`, a folder with both slashes. Text between tags is left alone. */
export const rebased = (html: string, base: string): string =>
  html.replace(TAG, (tag) =>
    tag
      .replace(LINK, `$1${base}`)
      .replace(REFRESH, `$1${base}`)
      .replace(
        SOURCES,
        (_all, start: string, sources: string) => start + sources.replace(/(^|,\s*)\/(?!\/)/g, `$1${base}`),
      ),
  );

/** The bundler's helper that fetches the parts of a script ahead of time spells their folder from the root. */
const HELPER = /(return\s*(["'`]))\/(\2\s*\+)/;
const moveHelper = (script: string, name: string, base: string): string => {
  if (!script.includes('modulepreload')) return script;
  if (!HELPER.test(script))
    throw new Error(`${name}: fetches ahead in a way that site/tools/rebase.ts can not move`);
  return script.replace(HELPER, `$1${base}$3`);
};

/** Moves a site that was built for `/` below a folder, for hosts that give no name of its own. */
export const rebase = (dist: string, base: string): void => {
  if (base === '/') return;
  for (const name of filesBelow(dist)) {
    const file = join(dist, name);
    if (name.endsWith('.html')) writeFileSync(file, rebased(readFileSync(file, 'utf8'), base));
    if (name.startsWith('_astro/') && name.endsWith('.js'))
      writeFileSync(file, moveHelper(readFileSync(file, 'utf8'), name, base));
  }
};
