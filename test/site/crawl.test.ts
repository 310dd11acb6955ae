/** Every link, picture, script and redirect of every page leads to something. Below a folder: folder.test.ts. */
import { existsSync } from 'node:fs';
import { expect, it } from 'vitest';
import { builtPages } from './built.ts';
import { deadLinks } from './dead-links.ts';

it('has no dead link', { timeout: 240_000 }, () => {
  expect(deadLinks(builtPages(), 'dist', '/').slice(0, 20)).toEqual([]);
});

it('has every picture, with its size and its alternative text', () => {
  const faults = builtPages().flatMap(({ address, html }) =>
    [...html.matchAll(/<img [^>]*>/g)].flatMap(([img]) => {
      const source = /src="([^"]*)"/.exec(img)?.[1] ?? '';
      const sound = /width="\d+"/.test(img) && /height="\d+"/.test(img) && /\balt(=|\s|>)/.test(img);
      return sound && existsSync(`dist${source}`) ? [] : [`${address} ${img}`];
    }),
  );
  expect(faults).toEqual([]);
});
