/**
 * `npm run addresses` appends new addresses of dist/ to content/addresses.txt. An address in there was
 * published once and must answer for ever; the build fails where one is lost.
 */
import { appendFileSync, existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesBelow } from '../build/hash.ts';

export const LEDGER = 'content/addresses.txt';

/** The pages below a flaw and below the search for it follow the trees; their answers are read from any address. */
export const followsATree = (address: string): boolean => /^\/(defects\/[^/]+|see)\/.+/.test(address);
/** The shelves of the sources follow what is on them. */
const SHELF = /^\/sources\/kind\//;
/** Of the other files, those that people and programs were told of. */
const FILES = /^\/(data\/[^/]+\.json|feed\.xml|sitemap\.xml|sw\.js|manifest\.webmanifest)$/;

/** The addresses of the pages among the files of a built site. */
export const pagesAmong = (names: readonly string[]): readonly string[] =>
  names
    .filter((name) => name.endsWith('index.html'))
    .map((name) => `/${name.slice(0, -'index.html'.length)}`);

/** The addresses of a built site that must last: pages, words of the glossary, files for programs. */
export const lastingAddresses = (dist: string): readonly string[] => {
  const names = filesBelow(dist);
  const pages = pagesAmong(names).filter((address) => !followsATree(address) && !SHELF.test(address));
  const glossary = join(dist, 'glossary/index.html');
  const html = existsSync(glossary) ? readFileSync(glossary, 'utf8') : '';
  const words = [...html.matchAll(/<(?:div|span) id="?([a-z0-9-]+)/g)].map(([, id]) => `/glossary/#${id}`);
  const files = names.map((name) => `/${name}`).filter((address) => FILES.test(address));
  return [...new Set([...pages, ...words, ...files])].sort();
};

const published = (ledger: string): readonly string[] =>
  existsSync(ledger)
    ? readFileSync(ledger, 'utf8')
        .split('\n')
        .map((line) => line.trim())
        .filter((line) => line && !line.startsWith('#'))
    : [];

/** What was published and is gone, and what is new, each sorted. */
export const compareLedger = (dist: string, ledger: string) => {
  const here = new Set(lastingAddresses(dist));
  const promised = new Set(published(ledger));
  return {
    lost: [...promised].filter((address) => !here.has(address)).sort(),
    added: [...here].filter((address) => !promised.has(address)).sort(),
  };
};

/** Throws for every address that would be lost, with what to do; gives those not yet in the ledger. */
export const checkLedger = (dist: string, ledger: string = LEDGER): readonly string[] => {
  const { lost, added } = compareLedger(dist, ledger);
  if (lost.length)
    throw new Error(
      lost
        .map(
          (address) =>
            `${ledger}: ${address} was published and would be lost; bring it back, or say in content/retired.yaml what stands for it (defect/old-id: new-id)`,
        )
        .join('\n'),
    );
  return added;
};

if (import.meta.main) {
  const added = checkLedger('dist');
  appendFileSync(LEDGER, added.map((address) => `${address}\n`).join(''));
  console.log(`${added.length} addresses added to ${LEDGER}`);
}
