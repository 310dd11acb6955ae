/** What a host is told of how long it may keep a file. */
import { expect, it } from 'vitest';
import { cacheControl } from '../../site/tools/headers.ts';

it('lets a host keep for ever only what has its hash in its name', () => {
  expect(cacheControl('/_astro/Page.abc.js')).toContain('immutable');
  expect(cacheControl('/offline/core.abc.bin')).toContain('immutable');
  for (const path of ['/', '/sw.js', '/boards/a.webp', '/r/runs/'])
    expect(cacheControl(path)).toBe('no-cache');
});
