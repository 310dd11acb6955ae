import { expect, it } from 'vitest';
import { renderBoard } from '#engine/board/render.ts';
import { recipeOf } from './board.ts';

const MARK = 245;

it.each([12, 20, 30, 60, 100, 150, 300])('is true to a pixel on a board %d mm wide', (widthMm) => {
  const { data } = renderBoard(recipeOf({ 'width-mm': widthMm, base: { paint: 'black' } }), {
    light: 'facing',
    width: 480,
    height: 360,
    scaleBar: true,
  });
  const bar = 360 - 12 - 1;
  const marked: number[] = [];
  for (let x = 0; x < 480; x++)
    if ([0, 1, 2].every((c) => data[(bar * 480 + x) * 4 + c] === MARK)) marked.push(x);
  const millimeters = (marked.length * widthMm) / 480;
  const round = [0.5, 1, 2, 5, 10, 20, 50, 100].map((mm) => Math.abs(mm - millimeters));
  expect(Math.min(...round)).toBeLessThanOrEqual(widthMm / 480);
  expect(marked.at(-1)).toBe(480 - 12 - 1);
});
