/** A network fault is told from a bug: only what the network did becomes a `NetworkFault`. */
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { fetchedOnce, fetchJson, NetworkFault } from '../../../site/client/shared/fetch-json.ts';

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
