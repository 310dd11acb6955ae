import { expect, it } from 'vitest';
import { lightBoard, makeBoard } from '#engine/board/render.ts';
import { recipeOf } from './board.ts';

const took = (run: () => void): number => {
  const start = performance.now();
  run();
  return performance.now() - start;
};

/** Rounds that a busy machine may need until each has had its turn undisturbed; of each the least counts. */
const MOST_ROUNDS = 60;

/** Trivial loops that making and lighting may take: a page draws some while she waits. */
const [MAKE, LIGHT] = [80, 16];

/** The yardstick: one power and four bytes a pixel. */
const trivial = (pixels: number): Uint8ClampedArray => {
  const out = new Uint8ClampedArray(pixels * 4);
  for (let i = 0; i < pixels; i++) {
    const v = 255 * (i / pixels) ** (1 / 2.4);
    out[i * 4] = v;
    out[i * 4 + 1] = v;
    out[i * 4 + 2] = v;
    out[i * 4 + 3] = 255;
  }
  return out;
};

it(`makes a 480 × 360 board in less than ${MAKE} trivial loops, and lights it in less than ${LIGHT}`, () => {
  const recipe = recipeOf({ base: { wood: 'oak' }, features: [{ kind: 'orange-peel' }] });
  const board = makeBoard(recipe, 480, 360);
  let [loop, make, light] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (
    let round = 0;
    round < MOST_ROUNDS && !(round > 2 && make / loop < MAKE && light / loop < LIGHT);
    round++
  ) {
    loop = Math.min(
      loop,
      took(() => trivial(480 * 360)),
    );
    make = Math.min(
      make,
      took(() => makeBoard(recipe, 480, 360)),
    );
    light = Math.min(
      light,
      took(() => lightBoard(board, 'raking')),
    );
  }
  expect(make / loop).toBeLessThan(MAKE);
  expect(light / loop).toBeLessThan(LIGHT);
});
