/** What the build wrote, read from dist/. */
import { readdirSync, readFileSync } from 'node:fs';

export type BuiltPage = { readonly address: string; readonly html: string };

/** Every page of a built site with its address below the folder of the site, in a settled order. */
export const pagesOf = (dist: string): readonly BuiltPage[] =>
  readdirSync(dist, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.html'))
    .sort()
    .map((name) => ({
      address: `/${name.replaceAll('\\', '/').replace(/index\.html$/, '')}`,
      html: readFileSync(`${dist}/${name}`, 'utf8'),
    }));

let read: readonly BuiltPage[] | undefined;

/** The pages of dist/. */
export const builtPages = (): readonly BuiltPage[] => {
  read ??= pagesOf('dist');
  return read;
};

/** The tags and classes that a page is made of: pages with the same are laid out alike. */
const shapeOf = (html: string): string =>
  [
    ...new Set(
      [...html.matchAll(/<([a-z][a-z0-9-]*)(?:[^>]*?\sclass="([^"]*)")?/g)].map(
        (found) => `${found[1]}.${found[2] ?? ''}`,
      ),
    ),
  ]
    .sort()
    .join(' ');

/** A short link leaves at once, so nothing can be looked at on it. */
const stays = ({ html }: BuiltPage) => !html.includes('http-equiv="refresh"');

/** One page for each layout that occurs. */
export const onePerShape = (): readonly BuiltPage[] => {
  const shapes = new Map<string, BuiltPage>();
  for (const page of builtPages().filter(stays))
    if (!shapes.has(shapeOf(page.html))) shapes.set(shapeOf(page.html), page);
  return [...shapes.values()];
};
