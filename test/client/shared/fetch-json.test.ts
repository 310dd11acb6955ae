/** A network fault is told from a bug: only what the network did becomes a `NetworkFault`. */
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import {
  fetchedOnce,
  fetchJson,
  late,
  NetworkFault,
  unlessOffline,
} from '../../../site/client/shared/fetch-json.ts';

beforeEach(() => vi.stubGlobal('location', { href: 'https://halfdry.example/schedule/' }));
afterEach(() => vi.unstubAllGlobals());
const answering = (answer: () => Response | Promise<Response>) => {
  const asked = vi.fn(async (_url: URL) => answer());
  vi.stubGlobal('fetch', asked);
  return asked;
};

it('gives what was sent', async () => {
  const asked = answering(() => Response.json({ a: 1 }));
  expect(await fetchJson({ url: '/data.json' })).toEqual({ a: 1 });
  expect(asked.mock.calls[0]?.[0].href).toBe('https://halfdry.example/data.json');
});

it.each([
  ['nobody answers', () => Promise.reject(new TypeError('Failed to fetch')), undefined],
  ['it is not there', () => new Response('', { status: 404 }), 404],
  ['the host is down', () => new Response('', { status: 503 }), 503],
  ['a sign-in page answers', () => new Response('<html>Welcome</html>'), 200],
  ['the answer is cut', () => new Response('{"a":'), 200],
])('tells where %s', async (_what, answer, status) => {
  answering(answer);
  const fault = await fetchJson({ url: '/data.json' }).catch((error: unknown) => error);
  expect(fault).toBeInstanceOf(NetworkFault);
  expect(fault).toMatchObject({ status });
});

it('takes an address that is none for the bug it is', async () => {
  answering(() => Response.json(1));
  const fault = await fetchJson({ url: 'https://' }).catch((error: unknown) => error);
  expect(fault).toBeInstanceOf(TypeError);
});

it('asks once, and again only after it failed', async () => {
  let up = false;
  const asked = answering(() => (up ? Response.json(1) : new Response('', { status: 500 })));
  const data = fetchedOnce<number>({ url: '/data.json' });
  await expect(data()).rejects.toBeInstanceOf(NetworkFault);
  up = true;
  expect(await Promise.all([data(), data()])).toEqual([1, 1]);
  expect(asked).toHaveBeenCalledTimes(2);
});

/** As browsers say it; that of the sign-in page in WebKit is from memory. */
it.each([
  'Failed to fetch dynamically imported module: https://halfdry.example/_astro/walk.js',
  'error loading dynamically imported module: https://halfdry.example/_astro/walk.js',
  'Importing a module script failed.',
  "'text/html' is not a valid JavaScript MIME type.",
])('tells a part of the program that did not come: %s', async (says) => {
  const asked = late(() => Promise.reject(new TypeError(says)));
  await expect(asked).rejects.toBeInstanceOf(NetworkFault);
});

it.each([
  ['a slip at the top of it', new TypeError('undefined is not a function')],
  ['an error of its own', new Error('no such form')],
])('takes %s for the bug it is, though it came late', async (_what, bug) => {
  await expect(late(() => Promise.reject(bug))).rejects.toBe(bug);
  await expect(unlessOffline(late(() => Promise.reject(bug)))).rejects.toBe(bug);
});
