/** Every link, picture, script and redirect of every page leads to something. Below a folder: folder.test.ts. */
import { expect, it } from 'vitest';
import { deadLinks } from './dead-links.ts';

it('has no dead link', { timeout: 240_000 }, () => {
  expect(deadLinks('dist', '/').slice(0, 20)).toEqual([]);
});
