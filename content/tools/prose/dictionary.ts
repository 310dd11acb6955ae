/** American spelling, by the dictionary of cspell (MIT). It is opened only for words that were never looked up before. */
import { existsSync, mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { createRequire, findPackageJSON } from 'node:module';
import { dirname, join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { decodeTrie } from 'cspell-trie-lib';
import { z } from 'zod';

const require = createRequire(import.meta.url);
const PROJECT = dirname(findPackageJSON('../..', import.meta.url) ?? process.cwd());
/** It lies beside the only file that the package lets others name. */
const TRIE = join(dirname(require.resolve('@cspell/dict-en_us/cspell-ext.json')), 'en_US.trie.gz');
const FILE = join(PROJECT, 'node_modules/.cache/halfdry-words.json');

const Kept = z.object({ version: z.string(), right: z.array(z.string()), wrong: z.array(z.string()) });
type Kept = z.infer<typeof Kept>;

const readKept = (version: string): Kept => {
  try {
    const { data } = Kept.safeParse(existsSync(FILE) && JSON.parse(readFileSync(FILE, 'utf8')));
    if (data?.version === version) return data;
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

const opened = (): ((word: string) => boolean) => {
  const packed = readFileSync(TRIE);
  const trie = decodeTrie(gunzipSync(packed));
  return (word) => trie.has(word) || trie.has(word.toLowerCase());
};

/** Those of `words` that no American dictionary has. */
export const notAmerican = (words: ReadonlySet<string>): ReadonlySet<string> => {
  const version = String(statSync(TRIE).size);
  const kept = readKept(version);
  const [right, wrong] = [new Set(kept.right), new Set(kept.wrong)];
  const fresh = [...words].filter((word) => !right.has(word) && !wrong.has(word));
  if (fresh.length) {
    const has = opened();
    for (const word of fresh) (has(word) ? right : wrong).add(word);
    keep({ version, right: [...right], wrong: [...wrong] });
  }
  return new Set([...words].filter((word) => wrong.has(word)));
};
