import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesBelow } from './hash.ts';

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

/** Moves a site that was built for `/` below a folder, for hosts that give no name of its own. */
export const rebase = (dist: string, base: string): void => {
  if (base === '/') return;
  for (const name of filesBelow(dist).filter((file) => file.endsWith('.html'))) {
    const file = join(dist, name);
    writeFileSync(file, rebased(readFileSync(file, 'utf8'), base));
  }
};
