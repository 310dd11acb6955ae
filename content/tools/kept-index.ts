import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { findPackageJSON } from 'node:module';
import { dirname, join } from 'node:path';
import type { FindIndex } from '#engine/find.ts';

// The build bundles this file and runs it from within dist/.
const PROJECT = dirname(findPackageJSON('..', import.meta.url) ?? process.cwd());
const FOLDER = join(PROJECT, 'node_modules/.cache/halfdry-search');
const BUILDER = join(PROJECT, 'engine/find');

const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex');

/** Changes with every line of what builds the index. */
const builtBy = (): string =>
  readdirSync(BUILDER)
    .sort()
    .map((name) => readFileSync(join(BUILDER, name), 'utf8'))
    .join();

/** What lies in the cache was written below, but the folder is anybody's. */
const isIndex = (value: unknown): value is FindIndex =>
  typeof value === 'object' &&
  value !== null &&
  ['documents', 'postings', 'learned'].every((key) => key in value);

/**
 * The index that was built from `madeOf` before, or the one that `build` makes now: learning takes as long as all proofs
 * together, and most commands meet the same words again.
 */
export const keptIndex = (madeOf: readonly unknown[], build: () => FindIndex): FindIndex => {
  const name = sha256(JSON.stringify(madeOf) + builtBy()).slice(0, 40);
  const file = join(FOLDER, `${name}.json`);
  const kept: unknown = existsSync(file) && JSON.parse(readFileSync(file, 'utf8'));
  if (isIndex(kept)) return kept;
  const index = build();
  mkdirSync(FOLDER, { recursive: true });
  writeFileSync(`${file}.${process.pid}`, JSON.stringify(index));
  renameSync(`${file}.${process.pid}`, file);
  return index;
};
