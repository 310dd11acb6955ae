/** Where links of a built site lead to nothing. */
import { existsSync } from 'node:fs';
import type { BuiltPage } from './built.ts';

/** An address in a tag: of a link, a picture, a script, a form, or of the page that one leaves for at once. */
const LINK =
  /\s(?:href|src|action|poster|data-clock)="([^"]*)"|\ssrcset="([^"]*)"|content="0; ?url=([^"]*)"/g;
const SCRIPT = /(<script[^>]*>)[\s\S]*?<\/script>/g;
const idsOf = (html: string) => new Set([...html.matchAll(/\sid="?([^"\s>]+)/g)].map(([, id = '']) => id));
const unescaped = (text: string) => text.replaceAll('&amp;', '&').replaceAll('&#38;', '&');

/** All addresses that a page names, entities read. */
const linksOf = (html: string): readonly string[] =>
  [...html.replace(SCRIPT, '$1').matchAll(LINK)].flatMap(([, one, many, next]) =>
    many === undefined
      ? unescaped(one ?? next ?? '')
      : many.split(',').map((of) => unescaped(of.trim().split(' ')[0] ?? '')),
  );

/** Only the page of a source leads out, to the agency that has published it. */
const leadsToPublisher = (address: string, link: string): boolean =>
  /\/sources\/[^/]+\/$/.test(address) && /^https:\/\/www\.[a-z]+\.gov\//.test(link);

/**
 * Every link, picture, script and redirect of the pages in the folder `dist` that leads to nothing, to no part of a page, or out of
 * `base`, the folder that the site was built for.
 */
export const deadLinks = (built: readonly BuiltPage[], dist: string, base: string): readonly string[] => {
  const pages = new Map(built.map(({ address, html }) => [address, html]));
  const ids = new Map<string, ReadonlySet<string>>();
  const known = new Map<string, boolean>();
  const isThere = (path: string): boolean => {
    const seen = known.get(path) ?? (pages.has(path) || (!path.endsWith('/') && existsSync(dist + path)));
    known.set(path, seen);
    return seen;
  };
  const faults: string[] = [];
  for (const [address, html] of pages) {
    for (const link of new Set(linksOf(html))) {
      if (/^(data:|tel:\d+$|https:\/\/halfdry\.example\/)/.test(link) || leadsToPublisher(address, link))
        continue;
      const { origin, pathname, hash } = new URL(link, `http://site${base}${address.slice(1)}`);
      const path = `/${pathname.slice(base.length)}`;
      if (origin !== 'http://site' || !pathname.startsWith(base))
        faults.push(`${address} → ${link}: leaves the site`);
      else if (!isThere(path)) faults.push(`${address} → ${link}: nothing there`);
      else if (hash) {
        const parts = ids.get(path) ?? idsOf(pages.get(path) ?? '');
        ids.set(path, parts);
        // What a page keeps in its address is no part of it.
        const kept = hash.includes('=');
        if (!kept && !parts.has(hash.slice(1))) faults.push(`${address} → ${link}: no such part`);
      }
    }
  }
  return faults;
};
