/** One page of each kind that a visitor meets, chosen from what was built. */
import { builtPages } from './built.ts';

const SHEET = /^\/defects\/[^/]+\/$/;
const NODE = /^\/defects\/[^/]+\/.+/;
const ASK = /class="ask(?: handover)?"/;

const KINDS: Readonly<Record<string, (address: string, html: string) => boolean>> = {
  home: (address) => address === '/',
  lost: (address) => address === '/404.html',
  flaws: (address) => address === '/defects/',
  flaw: (address, html) => SHEET.test(address) && html.includes('<hd-tree'),
  'question with pictures': (address, html) =>
    NODE.test(address) &&
    ASK.test(html) &&
    html.includes('<hd-question') &&
    html.includes('answers pictured'),
  question: (address, html) =>
    NODE.test(address) &&
    ASK.test(html) &&
    html.includes('<hd-question') &&
    !html.includes('answers pictured'),
  'another flaw': (address, html) => NODE.test(address) && ASK.test(html) && !html.includes('<hd-question'),
  'verdict, wait': (address, html) => NODE.test(address) && /class="verdict wait/.test(html),
  'verdict, leave': (address, html) => NODE.test(address) && /class="verdict leave/.test(html),
  'verdict, stop': (address, html) => NODE.test(address) && /class="verdict stop/.test(html),
  'verdict, repair': (address, html) => NODE.test(address) && /class="verdict repair/.test(html),
  'cause found': (address, html) => NODE.test(address) && !ASK.test(html) && !html.includes('class="verdict'),
  sights: (address) => address === '/see/',
  'sights, end': (address, html) => /^\/see\/.+/.test(address) && !html.includes('<hd-seen'),
  repair: (address) => /^\/remedies\/[^/]+\/$/.test(address),
  'repair with a stop': (address, html) =>
    /^\/remedies\/[^/]+\/$/.test(address) && html.includes('caution stop'),
  lesson: (address) => /^\/learn\/[^/]+\/$/.test(address),
  rule: (address) => /^\/safety\/[^/]+\/$/.test(address),
  term: (address) => /^\/glossary\/[^/]+\/$/.test(address),
  'sources of a kind': (address) => address.startsWith('/sources/kind/'),
  source: (address) => /^\/sources\/(?!kind\/)[^/]+\/$/.test(address),
  ...Object.fromEntries(
    [
      'remedies',
      'learn',
      'safety',
      'glossary',
      'sources',
      'about',
      'data',
      'search',
      'clock',
      'schedule',
      'tell',
      'which-coat',
    ].map((name) => [name, (address: string) => address === `/${name}/`]),
  ),
};

export type PageOfKind = { readonly kind: string; readonly address: string };

/** Each kind with the first page of it; a kind that no page is of is an error of this list. */
export const onePerKind = (): readonly PageOfKind[] =>
  Object.entries(KINDS).map(([kind, is]) => {
    const page = builtPages().find(
      ({ address, html }) => !html.includes('http-equiv="refresh"') && is(address, html),
    );
    if (!page) throw new Error(`no page is of this kind: ${kind}`);
    return { kind, address: page.address };
  });

/** The tags with their classes that a page is made of. */
const partsOf = (html: string): Set<string> =>
  new Set(
    [...html.matchAll(/<([a-z][a-z0-9-]*)(?:[^>]*?\sclass="([^"]*)")?/g)].map(
      ([, tag = '', classes = '']) => `${tag}.${classes}`,
    ),
  );

/** As few pages as it takes, so that each part that occurs anywhere is on one of them; the fullest first. */
export const everyPart = (): readonly string[] => {
  const shown = new Set<string>();
  const chosen: string[] = [];
  const pages = builtPages()
    .filter(({ html }) => !html.includes('http-equiv="refresh"'))
    .map(({ address, html }) => ({ address, parts: partsOf(html) }))
    .sort((one, two) => two.parts.size - one.parts.size);
  for (const { address, parts } of pages) {
    if ([...parts].every((part) => shown.has(part))) continue;
    chosen.push(address);
    for (const part of parts) shown.add(part);
  }
  return chosen;
};
