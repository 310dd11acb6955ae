import { turnableInSteps } from '#engine/board/turn.ts';
import type { BoardRecipe } from '#engine/model/board.ts';
import { lightAt } from '../shared/lights.ts';

/** As drawn: enough to tell a ridge from a dip, and on a phone small enough to be there at once. */
const ON_PHONE = { width: 280, height: 210 } as const;
const ON_DESK = { width: 400, height: 300 } as const;
export const practiceSize = (): { readonly width: number; readonly height: number } =>
  matchMedia('(min-width: 60rem)').matches ? ON_DESK : ON_PHONE;

/**
 * Shades a board into a canvas in any light, and says if it is there. As long as it is not, each call makes one layer of
 * its maps: all at once they would hold an old phone up for half a second.
 */
export type Shade = (canvas: HTMLCanvasElement, turn: number) => boolean;

export const shadeOf = (recipe: BoardRecipe, width: number, height: number): Shade => {
  const steps = turnableInSteps(recipe, width, height);
  let made: ReturnType<typeof steps.next> | undefined;
  let picture: ImageData | undefined;
  return (canvas, turn) => {
    if (!made?.done) {
      made = steps.next();
      return false;
    }
    picture ??= new ImageData(width, height);
    if (canvas.width !== width) canvas.width = width;
    if (canvas.height !== height) canvas.height = height;
    picture.data.set(made.value(lightAt(turn)).data);
    canvas.getContext('2d')?.putImageData(picture, 0, 0);
    return true;
  };
};

/** How the light stands, in words. */
export const lightSaid = (turn: number): string =>
  turn < 0.34 ? 'low light from the side' : turn < 0.67 ? 'light from higher up' : 'light facing you';
