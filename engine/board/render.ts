import type { BoardRecipe } from '../model/board.ts';
import { layBase } from './base.ts';
import { apply } from './features.ts';
import { type Board, blankBoard } from './field.ts';
import { layFilm } from './film.ts';
import { throughLens } from './lens.ts';
import { type LightChoice, layFrom, lightFrom } from './light.ts';
import { start } from './noise.ts';
import { pieceOf } from './piece.ts';
import type { Pixels } from './pixels.ts';
import { drawScaleBar } from './scale-bar.ts';
import { shade } from './shade.ts';
import { toTheEnd } from './steps.ts';

export type View = {
  light: LightChoice;
  /** Picture size in pixels; 480 × 360 shows a 60 mm board at 8 pixels a mm. */
  width: number;
  height: number;
  /** Draws a bar of known length in the corner. */
  scaleBar?: boolean;
};

/** The maps of a board, a layer at each step, so that a phone can answer a finger in between. */
export function* boardInSteps(
  recipe: BoardRecipe,
  columns: number,
  rows: number,
): Generator<undefined, Board> {
  const board = blankBoard(recipe['width-mm'], columns, rows);
  const piece = pieceOf(recipe);
  board.lay = layFrom(start(piece, 3));
  layBase(board, recipe.base, start(piece, 1));
  yield;
  layFilm(board, recipe['film-um'], recipe.sheen, recipe.wet, start(piece, 2));
  for (const [n, feature] of recipe.features.entries()) {
    yield;
    yield* apply(board, feature, start(recipe.seed, n + 10));
  }
  return board;
}

/** The maps of a board, to be shaded in one light or many. */
export const makeBoard = (recipe: BoardRecipe, columns: number, rows: number): Board =>
  toTheEnd(boardInSteps(recipe, columns, rows));

/** Shades a board once. */
export const lightBoard = (board: Board, light: LightChoice, scaleBar = false): Pixels => {
  const picture = {
    width: board.columns,
    height: board.rows,
    data: new Uint8ClampedArray(board.columns * board.rows * 4),
  };
  shade(board, lightFrom(light, board.lay), picture.data);
  throughLens(picture, board.lay);
  if (scaleBar) drawScaleBar(picture, board.widthMm);
  return picture;
};

/** A picture of a finished surface: the same recipe and view give the same bytes. */
export const renderBoard = (recipe: BoardRecipe, view: View): Pixels =>
  lightBoard(makeBoard(recipe, view.width, view.height), view.light, view.scaleBar ?? false);
