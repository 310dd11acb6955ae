import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { BOARD_VIEWS, copyBoards, missingBoards } from '../../../site/build/pictures/boards.ts';
import { drawAll } from '../../../site/build/pictures/drawing.ts';
import { recipeOf } from './board.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'boards-'));
});
afterAll(() => rm(folder, { recursive: true }));

const boards = [
  { name: 'nibs', recipe: recipeOf({ features: [{ kind: 'nibs' }] }) },
  { name: 'deep/none', recipe: recipeOf({ base: { wood: 'oak' } }) },
];

it('writes both views of each board, small enough for a page and the same each time', async () => {
  await drawAll(missingBoards(boards));
  expect(missingBoards(boards)).toEqual([]);
  const images = await copyBoards(boards, folder);
  expect(images.map(({ file }) => file)).toEqual(
    boards.flatMap(({ name }) => BOARD_VIEWS.map((view) => `${name}-${view}.webp`)),
  );
  for (const { file, bytes } of images) {
    const image = await readFile(join(folder, file));
    expect(image.subarray(8, 12).toString()).toBe('WEBP');
    expect(image.length).toBe(bytes);
    expect(bytes).toBeLessThan(20_000);
  }
  const again = await mkdtemp(join(folder, 'again-'));
  await copyBoards(boards, again);
  for (const { file } of images)
    expect((await readFile(join(again, file))).equals(await readFile(join(folder, file)))).toBe(true);
}, 60_000);
