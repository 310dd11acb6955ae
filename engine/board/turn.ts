import type { BoardRecipe } from '../model/board.ts';
import { type LightAngles, lightFrom } from './light.ts';
import type { Pixels } from './pixels.ts';
import { makeBoard } from './render.ts';
import { drawScaleBar } from './scale-bar.ts';
import { shade } from './shade.ts';

/**
 * A board whose light can be turned by hand: the maps are made once, each call only shades them again.
 * Every call fills and returns the same buffer.
 */
export const turnable = (
  recipe: BoardRecipe,
  width: number,
  height: number,
): ((light: LightAngles) => Pixels) => {
  const board = makeBoard(recipe, width, height);
  const picture: Pixels = { width, height, data: new Uint8ClampedArray(width * height * 4) };
  return (light) => {
    shade(board, lightFrom(light), picture.data);
    drawScaleBar(picture, board.widthMm);
    return picture;
  };
};
