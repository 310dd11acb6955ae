/**
 * A first view in one network flight: at most 13,000 bytes with gzip -6, so that ten segments carry it also where a
 * tunnel shortens them (10 × 1,348 bytes less 284 for headers). No request holds up the first paint.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { expect, it } from 'vitest';
import { builtPages } from './built.ts';

const MOST = 13_000;
const MEDIAN = 7_500;
/** So many pages on either side of the middle are packed as a host does. */
const AROUND = 300;
/** For the script of a page, which loads while she already reads. */
const SCRIPT = 8_000;
/** A note at the head of a page that keeps room for what is known here; it asks for nothing. */
const INLINE = 600;

it('keeps every page within one flight', () => {
  const packed = (html: string, level: number) => gzipSync(html, { level }).length;
  // The fastest level takes a third of the time and packs no better, so what passes with it passes.
  const weights = builtPages().map(({ address, html }) => {
    const quick = packed(html, 1);
    return { address, bytes: quick > MOST ? packed(html, 6) : quick, html };
  });
  expect(weights.flatMap(({ address, bytes }) => (bytes > MOST ? [{ address, bytes }] : []))).toEqual([]);
  // The fastest level orders the pages nearly as the usual one does: the median lies near the middle of its order.
  const middle = Math.floor(weights.length / 2);
  const near = weights
    .sort((a, b) => a.bytes - b.bytes)
    .slice(middle - AROUND, middle + AROUND + 1)
    .map(({ html }) => packed(html, 6))
    .sort((a, b) => a - b);
  expect(near[AROUND]).toBeLessThanOrEqual(MEDIAN);
});

it('asks for nothing before the first paint', () => {
  const blocking = builtPages().flatMap(({ address, html }) =>
    [
      // What is for paper comes when it comes, and so does a face: no browser waits for either.
      ...(html.match(/<link[^>]*rel="?(stylesheet|preload|modulepreload)[^>]*>/g) ?? []).filter(
        (link) => !/media="?print|as="?font/.test(link),
      ),
      ...(html.match(/<script(?![^>]*type="(module|application\/(ld\+)?json)")[^>]*\bsrc\b[^>]*>/g) ?? []),
      ...[...html.matchAll(/<script>(.*?)<\/script>/gs)]
        .filter(([, text = '']) => text.length > INLINE)
        .map(([all]) => all),
      ...(html.match(/@import/g) ?? []),
      // A face that is not here at once is left for the next visit, so that no text waits for it or moves.
      ...(html.match(/@font-face\{[^}]*\}/g) ?? []).filter(
        (face) => face.includes('url(') && !face.includes('font-display:optional'),
      ),
    ].map((found) => `${address} ${found}`),
  );
  expect(blocking).toEqual([]);
});

/** Schemas are for those who build: 25 KB of them in a page would outweigh all the rest. */
it('sends no schema library, and little script with each page', () => {
  const scripts = readdirSync('dist/_astro').filter((name) => name.endsWith('.js'));
  const source = (name: string) => readFileSync(`dist/_astro/${name}`, 'utf8');
  // Only what reads a file of job cards brings one, when it is asked to.
  const heavy = scripts.filter((name) => source(name).includes('ZodError'));
  expect(heavy.every((name) => name.startsWith('schema'))).toBe(true);
  expect(builtPages().filter(({ html }) => heavy.some((name) => html.includes(name)))).toEqual([]);
  const first = [...(builtPages()[0]?.html.matchAll(/src="\/_astro\/([^"]+)"/g) ?? [])].map(
    ([, name = '']) => name,
  );
  expect(first.length).toBeGreaterThan(0);
  for (const name of first) expect(gzipSync(source(name), { level: 6 }).length).toBeLessThanOrEqual(SCRIPT);
});
