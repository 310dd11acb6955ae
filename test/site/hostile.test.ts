/** Addresses meant to break the site: it answers each with a page, and runs nothing out of it. */
import { request } from 'node:http';
import fc from 'fast-check';
import { expect, inject, it } from 'vitest';
import { someOf, THOROUGH } from '../thorough.ts';
import { openPage, withoutPictures } from './browser.ts';

withoutPictures();

// 431: too long for any host to read.
const OUTCOMES = [200, 308, 400, 404, 431];
const SCRIPTS = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  'javascript:alert(1)',
  '{{constructor.constructor("alert(1)")()}}',
  '\u202e\u0000\ud800',
  '__proto__',
  '..%2f..%2fetc%2fpasswd',
  '%c0%ae%c0%ae/',
  '%E0%A4%A',
];
const segment = fc.oneof(
  fc.constantFrom(...SCRIPTS),
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.string({ unit: 'grapheme', maxLength: 20 }),
  fc.constantFrom('defects', 'lap-marks', 'see', 'r', 'cause', 'offline', '_astro', '..', '.', ''),
  fc.integer({ min: 500, max: 4000 }).map((length) => 'a'.repeat(length)),
);
const address = fc
  .tuple(fc.array(segment, { minLength: 1, maxLength: 5 }), fc.boolean(), fc.boolean())
  .map(([segments, encoded, slash]) => {
    const path = `/${segments.join('/')}${slash ? '/' : ''}`;
    return encoded ? `/${encodeURIComponent(path.toWellFormed())}` : path;
  });

/** What can stand in the first line of a request; the rest a client would have to encode. */
const sendable = (path: string) =>
  path.replace(/[^\x21-\x7e]/g, (sign) => encodeURIComponent(sign.toWellFormed()));

const ask = (path: string): Promise<{ status: number; type: string; body: string; safe: boolean }> =>
  new Promise((resolve, reject) => {
    const sent = request(`${inject('base')}/`, { path, agent: false }, (answer) => {
      let body = '';
      answer.setEncoding('utf8');
      answer.on('data', (more: string) => {
        body += more;
      });
      answer.on('end', () =>
        resolve({
          status: answer.statusCode ?? 0,
          type: answer.headers['content-type'] ?? '',
          body,
          safe: answer.headers['x-content-type-options'] === 'nosniff',
        }),
      );
    });
    sent.on('error', reject);
    sent.end();
  });

it('answers each of them with a page of its own', async () => {
  await fc.assert(
    fc.asyncProperty(address, async (path) => {
      const { status, type, body, safe } = await ask(sendable(path));
      expect(OUTCOMES).toContain(status);
      if (status !== 404) return;
      expect(type).toBe('text/html; charset=utf-8');
      expect(body).toContain('There is no page here');
      expect(body).not.toContain('alert(1)');
      expect(safe).toBe(true);
    }),
    { numRuns: THOROUGH ? 1000 : 250, seed: 20_261_125 },
  );
});

it('runs nothing in a browser, and is of use', async () => {
  const { page, foreign, close } = await openPage();
  let ran = 0;
  page.on('dialog', (dialog) => {
    ran += 1;
    void dialog.dismiss();
  });
  const bad = fc.sample(address, { numRuns: 12, seed: 7 }).map(sendable);
  const words = SCRIPTS.map(
    (text) =>
      `/search/?q=${encodeURIComponent(text.toWellFormed())}#${encodeURIComponent(text.toWellFormed())}`,
  );
  for (const path of [...someOf(2, bad), ...someOf(3, words)]) {
    // Two slashes at the front would name another host.
    await page.goto(path.replace(/^\/{2,}/, '/'), { waitUntil: 'networkidle' });
    expect(await page.locator('main a, main input').count()).toBeGreaterThan(0);
    expect(await page.locator('main :is(script[src=x], img[src=x])').count()).toBe(0);
  }
  expect(ran).toBe(0);
  expect(foreign).toEqual([]);
  await close();
});
