/** Where links of a built site lead to nothing. */
import { existsSync } from 'node:fs';
import { pagesOf } from './built.ts';

const TAG = /<[a-z][^<>]*>/g;
const LINK = /\s(?:href|src|action|poster|data-clock)="([^"]*)"/g;
const idsOf = (html: string) => new Set([...html.matchAll(/\sid="?([^"\s>]+)/g)].map(([, id = '']) => id));
const unescaped = (text: string) => text.replaceAll('&amp;', '&').replaceAll('&#38;', '&');

/** All addresses that a page names, entities read. */
const linksOf = (html: string): readonly string[] =>
  [
    ...html
      .replace(/<script[\s\S]*?<\/script>/g, (script) => script.slice(0, script.indexOf('>') + 1))
      .matchAll(TAG),
  ]
    .flatMap(([tag]) => [
      ...[...tag.matchAll(LINK)].map(([, url = '']) => url),
      ...(/srcset="([^"]*)"/
        .exec(tag)?.[1]
        ?.split(',')
        .map((one) => one.trim().split(' ')[0] ?? '') ?? []),
      ...(/content="0; ?url=([^"]*)"/.exec(tag)?.slice(1) ?? []),
    ])
    .map(unescaped);

/** Only the page of a source leads out, to the agency that has published it. */
export const leadsToPublisher = (address: string, link: string): boolean =>
  /\/sources\/[^/]+\/$/.test(address) && /^https:\/\/www\.[a-z]+\.gov\//.test(link);

/**
 * Every link, picture, script and redirect of the site in `dist` that leads to nothing, to no part of a page, or out of
 * `base`, the folder that the site was built for.
 */
export const deadLinks = (dist: string, base: string): readonly string[] => {
  const pages = new Map(pagesOf(dist).map(({ address, html }) => [address, html]));
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
      if (/^(data:|https:\/\/halfdry\.example\/)/.test(link) || leadsToPublisher(address, link)) continue;
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
