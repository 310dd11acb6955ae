import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';

/** SHA-256 in hexadecimal. */
export const sha256 = (data: string | Uint8Array): string => createHash('sha256').update(data).digest('hex');

/** Every file below a folder, with forward slashes, in a settled order. */
export const filesBelow = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => relative(folder, join(parentPath, name)).replaceAll('\\', '/'))
    .sort();

/** One hash over the names and contents of a whole folder. */
export const treeHash = (folder: string): string =>
  sha256(
    filesBelow(folder)
      .map((name) => `${sha256(readFileSync(join(folder, name)))} ${name}\n`)
      .join(''),
  );
