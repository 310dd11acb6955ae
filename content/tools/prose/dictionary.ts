/** American spelling, by the dictionary of cspell (MIT). It is opened only for words that were never looked up before. */
import { existsSync, mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { createRequire, findPackageJSON } from 'node:module';
import { dirname, join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { decodeTrie } from 'cspell-trie-lib';

const require = createRequire(import.meta.url);
const PROJECT = dirname(findPackageJSON('../..', import.meta.url) ?? process.cwd());
/** It lies beside the only file that the package lets others name. */
const TRIE = join(dirname(require.resolve('@cspell/dict-en_us/cspell-ext.json')), 'en_US.trie.gz');
const FILE = join(PROJECT, 'node_modules/.cache/halfdry-words.json');

/** As many are looked at of what is spelled like a word. */
const LIKE = 8;

type Kept = {
  readonly version: string;
  readonly right: readonly string[];
  readonly wrong: readonly string[];
};

const areWords = (value: unknown): value is readonly string[] =>
  Array.isArray(value) && value.every((one) => typeof one === 'string');

/** The folder is anybody's. */
const isKept = (value: unknown): value is Kept =>
  typeof value === 'object' &&
  value !== null &&
  'version' in value &&
  'right' in value &&
  'wrong' in value &&
  typeof value.version === 'string' &&
  areWords(value.right) &&
  areWords(value.wrong);

const readKept = (version: string): Kept => {
  try {
    const kept: unknown = existsSync(FILE) && JSON.parse(readFileSync(FILE, 'utf8'));
    if (isKept(kept) && kept.version === version) return kept;
  } catch {
    // Another process was stopped while it wrote: looked up anew.
  }
  return { version, right: [], wrong: [] };
};

const keep = (kept: Kept): void => {
  try {
    mkdirSync(dirname(FILE), { recursive: true });
    writeFileSync(`${FILE}.${process.pid}`, JSON.stringify(kept));
    renameSync(`${FILE}.${process.pid}`, FILE);
  } catch {
    // What can not be kept is looked up again.
  }
};

const opened = () => decodeTrie(gunzipSync(readFileSync(TRIE)));

/** What the dictionary has that is spelled like each of some words, the likest first. */
export const likeIn = (words: Iterable<string>): ReadonlyMap<string, readonly string[]> => {
  const trie = opened();
  return new Map(
    [...words].map((word) => [
      word,
      trie.suggest(word.toLowerCase(), { numSuggestions: LIKE, changeLimit: 3, includeTies: false }),
    ]),
  );
};

/** Those of `words` that no American dictionary has. */
export const notAmerican = (words: ReadonlySet<string>): ReadonlySet<string> => {
  const version = String(statSync(TRIE).size);
  const kept = readKept(version);
  const [right, wrong] = [new Set(kept.right), new Set(kept.wrong)];
  const fresh = [...words].filter((word) => !right.has(word) && !wrong.has(word));
  if (fresh.length) {
    const trie = opened();
    const has = (word: string) => trie.has(word) || trie.has(word.toLowerCase());
    for (const word of fresh) (has(word) ? right : wrong).add(word);
    keep({ version, right: [...right], wrong: [...wrong] });
  }
  return new Set([...words].filter((word) => wrong.has(word)));
};
