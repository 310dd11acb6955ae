/** The policy that each page carries. */
import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import { withPolicy } from '../../site/tools/csp.ts';
import { builtPages } from './built.ts';

const page = (head: string, body = '') =>
  `<html><head><meta charset="utf-8">${head}</head><body>${body}</body></html>`;
const hash = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

it('allows exactly the inline script and style of the page', () => {
  const html = withPolicy(
    page('<style>a{}</style><script>go()</script><script type="application/json">{}</script>'),
    'x.html',
  );
  expect(html).toContain(`style-src 'self' ${hash('a{}')};`);
  expect(html).toContain(`script-src 'self' ${hash('go()')};`);
  expect(html).not.toContain(hash('{}'));
});

it.each([
  ['<p style="color:red">', 'style='],
  ['<button onclick="go()">', 'onclick='],
])('refuses %s', (tag, name) => {
  expect(() => withPolicy(page('', tag), 'x.html')).toThrow(`x.html: the attribute ${name} would be blocked`);
});

it('refuses a page without a charset', () => {
  expect(() => withPolicy('<html><head></head></html>', 'x.html')).toThrow('no <meta charset>');
});

it('is on every page', () => {
  const bare = builtPages().filter(({ html }) => !html.includes('Content-Security-Policy'));
  expect(bare.map(({ address }) => address)).toEqual([]);
});
