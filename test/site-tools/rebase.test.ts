/** A site moves below a folder without another build. */
import { expect, it } from 'vitest';
import { cacheControl } from '../../site/tools/headers.ts';
import { rebased } from '../../site/tools/rebase.ts';

it.each([
  ['<a class="x" href="/r/runs/">', '<a class="x" href="/some/path/r/runs/">'],
  ['<a href="/">', '<a href="/some/path/">'],
  ['<form action="/search/" method="get">', '<form action="/some/path/search/" method="get">'],
  [
    '<img src="/a.webp" srcset="/a.webp 1x, /b.webp 2x">',
    '<img src="/some/path/a.webp" srcset="/some/path/a.webp 1x, /some/path/b.webp 2x">',
  ],
  [
    '<meta http-equiv="refresh" content="0; url=/r/">',
    '<meta http-equiv="refresh" content="0; url=/some/path/r/">',
  ],
  ['<a href="#main">', '<a href="#main">'],
  ['<a href="//else.example/">', '<a href="//else.example/">'],
  ['<link href="https://halfdry.example/">', '<link href="https://halfdry.example/">'],
  ['<p>href="/not a link"</p>', '<p>href="/not a link"</p>'],
])('%s', (html, moved) => {
  expect(rebased(html, '/some/path/')).toBe(moved);
});

it('lets a host keep for ever only what has its hash in its name', () => {
  expect(cacheControl('/_astro/Page.abc.js')).toContain('immutable');
  expect(cacheControl('/offline/core.abc.bin')).toContain('immutable');
  for (const path of ['/', '/sw.js', '/boards/a.webp', '/r/runs/'])
    expect(cacheControl(path)).toBe('no-cache');
});
