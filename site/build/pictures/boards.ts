import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { pieceOf } from '../../../engine/board/piece.ts';
import { lightBoard, makeBoard } from '../../../engine/board/render.ts';
import type { BoardRecipe } from '../../../engine/model/board.ts';
import { type Drawing, drawAll } from './drawing.ts';
import { cached, copyPicture, isDrawn, keepPicture, pictureKey } from './picture-cache.ts';

export type NamedBoard = {
  name: string;
  recipe: BoardRecipe;
  /** The lights that a page shows it in; both where left out. */
  views?: readonly BoardView[];
};
export type BoardView = (typeof BOARD_VIEWS)[number];
/** What was made for one view: its file in the target folder, and its size. */
export type BoardImage = { name: string; view: BoardView; file: string; bytes: number };

export const BOARD_VIEWS = ['raking', 'facing'] as const;
const BOARD_WIDTH = 480;
const BOARD_HEIGHT = 360;

/** Steps of quality, tried in turn until the picture is small enough; the last is taken as it is. */
const QUALITIES = [86, 76, 64, 50];
const MOST_BYTES = 12_288;
/** One step more takes twice the time and saves 4 % of the bytes. */
const ENCODER = { effort: 2 } as const;

/** Alternative text is no part of the picture and does not draw it again. */
const keyOf = (recipe: BoardRecipe): string =>
  pictureKey({ ...recipe, alt: '' }, ENCODER, QUALITIES, MOST_BYTES, BOARD_WIDTH, BOARD_HEIGHT);
const fileOf = (key: string, view: BoardView): string => `${key}-${view}.webp`;

/** What the cache lacks of these boards; those that share what lies under the flaw come one after the other. */
export const missingBoards = (boards: readonly NamedBoard[]): readonly Drawing[] => {
  const missing = new Map(
    boards
      .map(({ recipe }): [string, BoardRecipe] => [keyOf(recipe), recipe])
      .filter(([key]) => !BOARD_VIEWS.every((view) => isDrawn(fileOf(key, view)))),
  );
  const under = (recipe: BoardRecipe) => pieceOf(recipe).toString();
  return [...missing]
    .map(([key, recipe]) => ({ kind: 'board', key, recipe }) as const)
    .sort((one, two) => under(one.recipe).localeCompare(under(two.recipe), 'en'));
};

/** Draws and encodes both views of a board into the cache. */
export const drawBoard = async ({ key, recipe }: { key: string; recipe: BoardRecipe }): Promise<void> => {
  const board = makeBoard(recipe, BOARD_WIDTH, BOARD_HEIGHT);
  for (const view of BOARD_VIEWS) {
    const { data, width, height } = lightBoard(board, view, true);
    const picture = sharp(data, { raw: { width, height, channels: 4 } }).removeAlpha();
    let image = Buffer.alloc(0);
    for (const quality of QUALITIES) {
      image = await picture
        .clone()
        .webp({ ...ENCODER, quality })
        .toBuffer();
      if (image.length <= MOST_BYTES) break;
    }
    await keepPicture(fileOf(key, view), image);
  }
};

/** Copies both views of every board from the cache to `<folder>/<name>-<view>.webp`. */
export const copyBoards = async (boards: readonly NamedBoard[], folder: string): Promise<BoardImage[]> => {
  const images: BoardImage[] = [];
  for (const { name, recipe, views = BOARD_VIEWS } of boards)
    for (const view of views) {
      const file = `${name}-${view}.webp`;
      await copyPicture(fileOf(keyOf(recipe), view), join(folder, file));
      images.push({ name, view, file, bytes: (await stat(join(folder, file))).size });
    }
  return images;
};

/** Where one view of a board lies in the cache; drawn first if it is not there. */
export const boardFile = async (board: NamedBoard, view: BoardView): Promise<string> => {
  await drawAll(missingBoards([board]));
  return cached(fileOf(keyOf(board.recipe), view));
};
