/**
 * A first view in one network flight: at most 13,000 bytes with gzip -6, so that ten segments carry it also where a
 * tunnel shortens them (10 × 1,348 bytes less 284 for headers). No request holds up the first paint.
 */
import { gzipSync } from 'node:zlib';
import { expect, it } from 'vitest';
import { builtPages } from './built.ts';

const MOST = 13_000;
const MEDIAN = 7_000;

it('keeps every page within one flight', () => {
  const weights = builtPages().map(({ address, html }) => ({
    address,
    bytes: gzipSync(html, { level: 6 }).length,
  }));
  expect(weights.filter(({ bytes }) => bytes > MOST)).toEqual([]);
  const sorted = weights.map(({ bytes }) => bytes).sort((a, b) => a - b);
  expect(sorted[Math.floor(sorted.length / 2)]).toBeLessThanOrEqual(MEDIAN);
});

it('asks for nothing before the first paint', () => {
  const blocking = builtPages().flatMap(({ address, html }) =>
    [
      ...(html.match(/<link[^>]*rel="?(stylesheet|preload|modulepreload)[^>]*>/g) ?? []),
      ...(html.match(/<script(?![^>]*type="(module|application\/(ld\+)?json)")[^>]*>/g) ?? []),
      ...(html.match(/@import|@font-face/g) ?? []),
    ].map((found) => `${address} ${found}`),
  );
  expect(blocking).toEqual([]);
});
