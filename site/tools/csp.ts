import { createHash } from 'node:crypto';
import type { AstroIntegration } from 'astro';

const TAG = /<(script|style)\b([^>]*)>([\s\S]*?)<\/\1>/g;
/** An attribute that a strict policy blocks, inside a tag. */
const BLOCKED = /<[a-z][^<>]*?\s(style|on[a-z]+)\s*=\s*["'][^<>]*>/i;
/** Scripts of these types are run; any other type is a block of data. */
const RUN = /\btype\s*=\s*["']?(module|importmap|speculationrules|text\/javascript)/;

/** A style that names the layers and has nothing else. */
const LAYERS = /<style>(@layer [\w, ]+);?<\/style>/;

/** The names of the layers at the head of the first style that has more: a style of their own would cost a hash. */
const withLayersInside = (html: string): string => {
  const [alone, names] = LAYERS.exec(html) ?? [];
  return alone ? html.replace(alone, '').replace('<style>', `<style>${names};`) : html;
};

const hash = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

const policy = (scripts: ReadonlySet<string>, styles: ReadonlySet<string>) =>
  [
    "default-src 'none'",
    ["script-src 'self'", ...scripts].join(' '),
    ["style-src 'self'", ...styles].join(' '),
    "img-src 'self' data:",
    "connect-src 'self'",
    "font-src 'self'",
    "manifest-src 'self'",
    "worker-src 'self'",
    "base-uri 'none'",
    "form-action 'self'",
    "require-trusted-types-for 'script'",
    'trusted-types sw',
  ].join('; ');

/** The page with its policy behind the charset, its layers named once. Throws for a `style` or `on…` attribute, naming it. */
export const withPolicy = (written: string, file: string): string => {
  const html = withLayersInside(written);
  const scripts = new Set<string>();
  const styles = new Set<string>();
  const bare = html.replace(TAG, (_all, tag: string, attributes: string, text: string) => {
    const runs = !/\btype\s*=/.test(attributes) || RUN.test(attributes);
    if (tag === 'style') styles.add(hash(text));
    else if (runs && !/\bsrc\s*=/.test(attributes)) scripts.add(hash(text));
    return '';
  });
  const blocked = BLOCKED.exec(bare);
  if (blocked)
    throw new Error(`${file}: the attribute ${blocked[1]}= would be blocked; use a class or a listener`);
  const charset = /<meta charset="?utf-8"?\s*\/?>/i;
  if (!charset.test(html)) throw new Error(`${file}: no <meta charset>; every page needs the layout's head`);
  return html.replace(
    charset,
    (meta) => `${meta}<meta http-equiv="Content-Security-Policy" content="${policy(scripts, styles)}">`,
  );
};

/** Gives every built page a policy with the hashes of exactly what stands in it, as the page is written. */
export const csp = (): AstroIntegration => ({
  name: 'csp',
  hooks: {
    'astro:config:setup': ({ command, addMiddleware }) => {
      // The preview's own scripts change with every edit.
      if (command === 'build')
        addMiddleware({ entrypoint: new URL('./policy-middleware.ts', import.meta.url), order: 'pre' });
    },
  },
});
