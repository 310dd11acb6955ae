import type { BoardRecipe } from '../model/board.ts';
import { throughLens } from './lens.ts';
import { type LightAngles, lightFrom } from './light.ts';
import type { Pixels } from './pixels.ts';
import { boardInSteps } from './render.ts';
import { drawScaleBar } from './scale-bar.ts';
import { shade } from './shade.ts';
import { toTheEnd } from './steps.ts';

type Turn = (light: LightAngles) => Pixels;

/**
 * A board whose light can be turned by hand: the maps are made once, each call only shades them again.
 * Every call fills and returns the same buffer.
 */
export const turnable = (recipe: BoardRecipe, width: number, height: number): Turn =>
  toTheEnd(turnableInSteps(recipe, width, height));

/** The same, made layer by layer. */
export function* turnableInSteps(
  recipe: BoardRecipe,
  width: number,
  height: number,
): Generator<undefined, Turn> {
  const board = yield* boardInSteps(recipe, width, height);
  const picture: Pixels = { width, height, data: new Uint8ClampedArray(width * height * 4) };
  return (light) => {
    shade(board, lightFrom(light, board.lay), picture.data);
    throughLens(picture, board.lay);
    drawScaleBar(picture, board.widthMm);
    return picture;
  };
}
