/**
 * From a tap to the verdict on the screen: over a slow network beside a page of one flight without anything to fetch,
 * and from the service worker beside a worker that does nothing but answer from its cache.
 */
import { randomBytes } from 'node:crypto';
import { existsSync, readFileSync, statSync } from 'node:fs';
import type { RequestListener } from 'node:http';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { median } from '../measure.ts';
import type { Row } from '../row.ts';
import { served, slowTab } from './chrome.ts';
import { FLIGHT } from './weights.ts';

/** A page with a verdict, as a shared link opens it. */
const VERDICT = '/defects/bubbles/stage-wet/';
const ROUNDS = 9;
/** Slow 4G as Lighthouse and the tools of Chromium reckon it, from memory: 150 ms there and back, 1.6 Mbit/s. */
const SLOW_4G = {
  offline: false,
  latency: 562.5,
  downloadThroughput: (1.6e6 * 0.9) / 8,
  uploadThroughput: (0.75e6 * 0.9) / 8,
};

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.css': 'text/css',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webp': 'image/webp',
};
const PACKED = new Set(['.html', '.js', '.json', '.css', '.webmanifest', '.svg']);

/** The built site as a host sends it: packed. */
const site: RequestListener = (request, response) => {
  const path = decodeURIComponent(new URL(request.url ?? '/', 'http://site').pathname);
  const file = join('dist', path.endsWith('/') ? `${path}index.html` : path);
  if (path.split('/').includes('..') || !existsSync(file) || !statSync(file).isFile())
    return response.writeHead(404).end();
  const type = extname(file);
  const body = readFileSync(file);
  const packs = PACKED.has(type);
  response.writeHead(200, {
    'Content-Type': TYPES[type] ?? 'application/octet-stream',
    ...(packs && { 'Content-Encoding': 'gzip' }),
  });
  return response.end(packs ? gzipSync(body, { level: 6 }) : body);
};

/** Text that packs to a flight, and nothing else to fetch. */
const flight = (): Buffer => {
  const page = (bytes: number) =>
    `<!doctype html><html lang="en"><meta charset="utf-8"><link rel="icon" href="data:,"><title>flight</title><h1>Hands off</h1><p>${randomBytes(bytes).toString('hex')}</p>`;
  let bytes = 4_000;
  while (gzipSync(page(bytes)).length < FLIGHT) bytes += 100;
  return gzipSync(page(bytes - 100));
};

const WORKER = `self.addEventListener('install', (event) =>
  event.waitUntil(caches.open('kept').then((kept) => kept.add('/')).then(() => self.skipWaiting())));
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
self.addEventListener('fetch', (event) => event.respondWith(caches.match('/')));`;

const plain = (): RequestListener => {
  const body = flight();
  return (request, response) =>
    request.url === '/sw.js'
      ? response.writeHead(200, { 'Content-Type': 'text/javascript' }).end(WORKER)
      : response.writeHead(200, { 'Content-Type': TYPES['.html'], 'Content-Encoding': 'gzip' }).end(body);
};

/** When the first text was painted, in milliseconds after the page was asked for. */
const painted = async (page: Page, path: string): Promise<number> => {
  await page.goto(path, { waitUntil: 'load' });
  const at = await page.waitForFunction(
    () => performance.getEntriesByName('first-contentful-paint')[0]?.startTime,
  );
  const words = await page.locator('h1').first().isVisible();
  if (!words) throw new Error(`${path} shows no heading`);
  return Number(await at.jsonValue());
};

type Round = { readonly flight: number; readonly own: number };

const overNetwork = async (browser: Browser, own: string, other: string) => {
  const rounds: Round[] = [];
  let requests = 0;
  const once = (base: string, path: string) =>
    slowTab(browser, base, async ({ page, session }) => {
      requests = 0;
      page.on('request', (request) => {
        if (request.url().startsWith('http')) requests += 1;
      });
      await session.send('Network.enable');
      await session.send('Network.emulateNetworkConditions', SLOW_4G);
      return painted(page, path);
    });
  for (let round = 0; round < ROUNDS; round++)
    rounds.push({ flight: await once(other, '/'), own: await once(own, VERDICT) });
  return { rounds, requests };
};

const fromWorker = async (browser: Browser, own: string, other: string): Promise<readonly Round[]> => {
  const kept = (base: string, path: string, ready: (page: Page) => Promise<unknown>) =>
    slowTab(
      browser,
      base,
      async ({ page, session }) => {
        await page.goto('/');
        await ready(page);
        await page.context().setOffline(true);
        await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
        const times: number[] = [];
        for (let round = 0; round <= ROUNDS; round++) times.push(await painted(page, path));
        // The first starts the worker anew, or does not: it is left out.
        return times.slice(1);
      },
      1,
    );
  const others = await kept(other, '/', async (page) => {
    await page.evaluate(() => navigator.serviceWorker.register('/sw.js'));
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  });
  const owns = await kept(own, VERDICT, async (page) => {
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await page.getByText('Everything is on this device.').waitFor({ timeout: 120_000 });
  });
  return owns.map((time, at) => ({ own: time, flight: others[at] ?? Number.NaN }));
};

const lines = (what: string, peer: string, rounds: readonly Round[]): readonly Row[] => {
  const ratios = rounds.map((round) => round.own / round.flight).sort((a, b) => a - b);
  return [
    { what, name: peer, value: 1e6 * median(rounds.map((round) => round.flight)), unit: 'ns' },
    {
      what: '',
      name: 'the page of a verdict',
      value: 1e6 * median(rounds.map(({ own }) => own)),
      unit: 'ns',
      ratio: [median(ratios), ratios[0] ?? 0, ratios.at(-1) ?? 0],
    },
  ];
};

export const verdict = (browser: Browser): Promise<readonly Row[]> =>
  served(site, (own) =>
    served(plain(), async (other) => {
      const { rounds, requests } = await overNetwork(browser, own, other);
      return [
        ...lines('to the verdict on slow 4G', 'a page of one flight', rounds),
        {
          what: 'requests of that page, its own included',
          name: 'until it has loaded',
          value: requests,
          unit: 'requests',
        },
        ...lines(
          'to the verdict without network',
          'a worker that only answers',
          await fromWorker(browser, own, other),
        ),
      ];
    }),
  );
