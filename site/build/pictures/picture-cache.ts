import { existsSync, readFileSync } from 'node:fs';
import { copyFile, mkdir, rename, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { filesBelow, sha256 } from '../hash.ts';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const CACHE = join(root, 'node_modules/.cache/halfdry-pictures');
const renderer = join(root, 'engine/board');

/** Changes with every line of the renderer, and with the encoder. */
const DRAWN_BY = sha256(
  [
    JSON.stringify(sharp.versions),
    ...filesBelow(renderer).map((file) => sha256(readFileSync(join(renderer, file)))),
  ].join(),
);

/** Names a picture by all that it is made of. */
export const pictureKey = (...madeOf: readonly unknown[]): string =>
  sha256(JSON.stringify([...madeOf, DRAWN_BY])).slice(0, 40);

/** Where a picture lies once it is drawn. */
export const cached = (file: string): string => join(CACHE, file);

export const isDrawn = (file: string): boolean => existsSync(cached(file));

/** Puts a picture into the cache, whole or not at all. */
export const keepPicture = async (file: string, picture: Uint8Array): Promise<void> => {
  await mkdir(CACHE, { recursive: true });
  await writeFile(cached(`${file}.part`), picture);
  await rename(cached(`${file}.part`), cached(file));
};

/** Copies a picture from the cache to where the site wants it. */
export const copyPicture = async (file: string, target: string): Promise<void> => {
  await mkdir(dirname(target), { recursive: true });
  await copyFile(cached(file), target);
};
