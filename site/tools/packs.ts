import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { filesBelow, sha256 } from '../build/hash.ts';
import type { PackHead } from '../worker/pack.ts';
import { packKey } from '../worker/pack-key.ts';
import type { PackList } from '../worker/scope.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
  '.avif': 'image/avif',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
};

/** For other machines than hers, or for the host alone: not kept on the phone. */
const LEFT_OUT =
  /^(cards\/|offline\/|\.|_headers$|_redirects$|CNAME$|sw\.js$|robots\.txt$|feed\.xml$|sitemap\.xml$)/;

/** What many pages of a pack have in common. */
const SHARED = /(<style>[\s\S]*?<\/style>|<header class="top">[\s\S]*?<\/header>|<footer[\s\S]*?<\/footer>)/;

/** Enough of a SHA-256 to tell versions apart and to find damage. */
const HASH_DIGITS = 20;

const partsOf = (name: string, bytes: Buffer): readonly Buffer[] =>
  name.endsWith('.html')
    ? bytes
        .toString('utf8')
        .split(SHARED)
        .map((text) => Buffer.from(text))
    : [bytes];

/** Packs some files of `dist` as site/worker/pack.ts reads them. The same files give the same bytes. */
const pack = async (dist: string, names: readonly string[]): Promise<Buffer> => {
  const parts: Buffer[] = [];
  const numbers = new Map<string, number>();
  const numberOf = (part: Buffer): number => {
    const hash = sha256(part);
    const number = numbers.get(hash) ?? parts.push(part) - 1;
    numbers.set(hash, number);
    return number;
  };
  const files: Record<string, [string, ...number[]]> = {};
  for (const name of names) {
    const type = TYPES[extname(name)];
    if (!type) throw new Error(`${name}: give its media type in site/tools/packs.ts, or leave it out there`);
    const address = name.replace(/(^|\/)index\.html$/, '$1');
    files[address] = [type, ...partsOf(name, readFileSync(join(dist, name))).map(numberOf)];
  }
  const head: PackHead = { parts: parts.map(({ length }) => length), files };
  const headBytes = Buffer.from(JSON.stringify(head));
  const length = Buffer.alloc(4);
  length.writeUInt32BE(headBytes.length);
  return promisify(gzip)(Buffer.concat([length, headBytes, ...parts]), { level: 9 });
};

/**
 * Writes everything that is kept on a phone to `dist/offline/`, in packs, and gives their list.
 * They do not end in `.gz`: some hosts would send such a file as encoded, and it would be unpacked twice.
 */
export const writePacks = async (dist: string): Promise<PackList> => {
  const folder = join(dist, 'offline');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder);
  const names = Map.groupBy(
    filesBelow(dist).filter((name) => !LEFT_OUT.test(name)),
    (name) => packKey(name.replace(/(^|\/)index\.html$/, '$1')),
  );
  const keys = [...names.keys()].sort();
  // Each is compressed on another thread while the next is read.
  const packs = await Promise.all(
    keys.map(async (key) => {
      const bytes = await pack(dist, names.get(key) ?? []);
      const hash = sha256(bytes).slice(0, HASH_DIGITS);
      writeFileSync(join(folder, `${key}.${hash}.bin`), bytes);
      return [key, hash] as const;
    }),
  );
  return Object.fromEntries(packs);
};
