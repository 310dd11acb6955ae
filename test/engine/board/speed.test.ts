import { expect, it } from 'vitest';
import { lightBoard, makeBoard } from '#engine/board/render.ts';
import { recipeOf } from './board.ts';

/** Least of several runs, so that a busy machine does not decide. */
const least = (run: () => void): number => {
  let best = Number.POSITIVE_INFINITY;
  for (let n = 0; n < 15; n++) {
    const start = performance.now();
    run();
    best = Math.min(best, performance.now() - start);
  }
  return best;
};

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

it('makes a 480 × 360 board in less than 60 trivial loops, and lights it in less than 12', () => {
  const recipe = recipeOf({ base: { wood: 'oak' }, features: [{ kind: 'orange-peel' }] });
  const loop = least(() => trivial(480 * 360));
  const board = makeBoard(recipe, 480, 360);
  expect(least(() => makeBoard(recipe, 480, 360)) / loop).toBeLessThan(60);
  expect(least(() => lightBoard(board, 'raking')) / loop).toBeLessThan(12);
});
