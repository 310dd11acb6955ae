import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Retired } from '#engine/link.ts';
import { withPolicy } from './csp.ts';

/** Where the pages of a kind stand; below `{id}` goes the id. */
const PLACES: Readonly<Record<string, readonly string[]>> = {
  defect: ['defects/{id}/', 'r/{id}/'],
  remedy: ['remedies/{id}/', 'r/{id}/'],
  lesson: ['learn/{id}/'],
  source: ['sources/{id}/'],
};

/** An address that moved. Both are relative to the site's folder. */
type Moved = { readonly from: string; readonly to: string };

/** The id that stands today for one that was retired, perhaps several times. Throws where they turn in a circle. */
const today = (retired: Retired, kind: string, id: string): string => {
  const passed = [id];
  for (let next = retired[`${kind}/${id}`]; next !== undefined; next = retired[`${kind}/${next}`]) {
    if (passed.includes(next))
      throw new Error(`content/retired.yaml: ${kind}/${[...passed, next].join(' → ')} goes in a circle`);
    passed.push(next);
  }
  return passed.at(-1) ?? id;
};

/** Every old address with its new one. Terms have none: they are parts of one page, see `keepAnchors`. */
const movedPages = (retired: Retired): readonly Moved[] =>
  Object.keys(retired).flatMap((name) => {
    const [kind = '', id = ''] = name.split('/');
    const places = PLACES[kind];
    if (kind === 'term') return [];
    if (!places || !id)
      throw new Error(
        `content/retired.yaml: "${name}" has no page; write one of ${Object.keys(PLACES).join(', ')}, term, a slash, and the old id`,
      );
    const [first = ''] = places;
    const to = first.replace('{id}', today(retired, kind, id));
    return places.map((place) => ({ from: place.replace('{id}', id), to }));
  });

/** A page that leads on by itself on any host. A `#part` of the old link is kept where there is script or a server. */
const page = (to: string): string =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Moved · Halfdry</title><meta name="robots" content="noindex"><meta http-equiv="refresh" content="0; url=${to}"></head><body><main><h1>This page moved</h1><p><a href="${to}">Go on to where it is now</a></p></main></body></html>`;

/** Old words of the glossary stay good as parts of its page. */
const keepAnchors = (dist: string, retired: Retired): void => {
  const file = join(dist, 'glossary/index.html');
  for (const name of Object.keys(retired).filter((one) => one.startsWith('term/'))) {
    const id = name.slice('term/'.length);
    const html = readFileSync(file, 'utf8');
    const now = `<div id="${today(retired, 'term', id)}"`;
    if (!html.includes(now))
      throw new Error(`content/retired.yaml: ${name}: the glossary has no ${now.slice(5)}`);
    writeFileSync(file, html.replace(now, `<span id="${id}"></span>${now}`));
  }
};

/**
 * Keeps every retired address alive: a page at the old place, and `_redirects` for hosts that read it, which also
 * takes what lay below a flaw. Throws for a target that is not there, and for an old id that is in use again.
 */
export const writeRedirects = (dist: string, retired: Retired, base: string): void => {
  const moved = movedPages(retired);
  for (const { from, to } of moved) {
    const file = join(dist, from, 'index.html');
    if (existsSync(file))
      throw new Error(`content/retired.yaml: /${from} is in use; take its line out, or choose another id`);
    if (!existsSync(join(dist, to, 'index.html')))
      throw new Error(
        `content/retired.yaml: /${from} leads to /${to}, which is not there; name an id that is`,
      );
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, withPolicy(page(base + to), file));
  }
  keepAnchors(dist, retired);
  const lines = moved.flatMap(({ from, to }) => [
    `${base}${from} ${base}${to} 301`,
    ...(from.startsWith('defects/') ? [`${base}${from}* ${base}${to}:splat 301`] : []),
  ]);
  writeFileSync(join(dist, '_redirects'), lines.map((line) => `${line}\n`).join(''));
};
