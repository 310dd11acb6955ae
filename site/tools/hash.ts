import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** SHA-256 in hexadecimal. */
export const sha256 = (data: string | Uint8Array): string => createHash('sha256').update(data).digest('hex');

/** Every file below a folder, with forward slashes, in a settled order. */
export const filesBelow = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => statSync(join(folder, name)).isFile())
    .map((name) => name.replaceAll('\\', '/'))
    .sort();

/** One hash over the names and contents of a whole folder. */
export const treeHash = (folder: string): string =>
  sha256(
    filesBelow(folder)
      .map((name) => `${sha256(readFileSync(join(folder, name)))} ${name}\n`)
      .join(''),
  );
