/** Every link on every page leads to a page or file that was built, and to a part that is on it. */
import { existsSync } from 'node:fs';
import { expect, it } from 'vitest';
import { builtPages } from './built.ts';
import { leadsToPublisher } from './dead-links.ts';

const pages = new Map(builtPages().map(({ address, html }) => [address, html]));

const fault = (from: string, href: string): string | undefined => {
  const { pathname, hash } = new URL(href, `http://site${from}`);
  const html = pages.get(pathname);
  if (!html && (pathname.endsWith('/') || !existsSync(`dist${pathname}`)))
    return `${from} → ${href}: nothing there`;
  // What a page keeps in its address is no part of it.
  if (hash && !hash.includes('=') && !html?.includes(`id="${hash.slice(1)}"`))
    return `${from} → ${href}: no such part`;
  return undefined;
};

it('has no dead link', () => {
  const faults = [...pages].flatMap(([address, html]) =>
    [...html.matchAll(/<a [^>]*?href="([^"]*)"/g)].flatMap(([, href = '']) =>
      /^(https?:|mailto:|data:)/.test(href) && !leadsToPublisher(address, href)
        ? [`${address} → ${href}: leaves the site`]
        : leadsToPublisher(address, href)
          ? []
          : (fault(address, href) ?? []),
    ),
  );
  expect(faults).toEqual([]);
});

it('has every picture, with its size and its alternative text', () => {
  const faults = [...pages].flatMap(([address, html]) =>
    [...html.matchAll(/<img [^>]*>/g)].flatMap(([img]) => {
      const source = /src="([^"]*)"/.exec(img)?.[1] ?? '';
      const sound = /width="\d+"/.test(img) && /height="\d+"/.test(img) && /\balt(=|\s|>)/.test(img);
      return sound && existsSync(`dist${source}`) ? [] : [`${address} ${img}`];
    }),
  );
  expect(faults).toEqual([]);
});
