import { expect, it } from 'vitest';
import { renderBoard } from '#engine/board/render.ts';
import { turnable } from '#engine/board/turn.ts';
import { meanDifference, recipeOf } from './board.ts';

const recipe = recipeOf({ sheen: 'gloss', features: [{ kind: 'orange-peel' }] });
const turn = turnable(recipe, 240, 180);

it('shows what a fresh picture in the same light shows', () => {
  const light = { azimuthDegrees: 30, elevationDegrees: 25 };
  turn({ azimuthDegrees: 150, elevationDegrees: 50 });
  expect(turn(light).data).toEqual(
    renderBoard(recipe, { light, width: 240, height: 180, scaleBar: true }).data,
  );
});

it('changes little for a small turn, so that a slider runs smoothly', () => {
  const at = (elevationDegrees: number) => turn({ azimuthDegrees: 142, elevationDegrees }).data.slice();
  expect(meanDifference(at(11), at(12))).toBeLessThan(6);
  expect(meanDifference(at(11), at(58))).toBeGreaterThan(12);
});

it('shades a frame fast enough for 20 a second on a phone a quarter as fast', () => {
  let best = Number.POSITIVE_INFINITY;
  for (let n = 0; n < 25; n++) {
    // The time of this thread alone: what else the machine does is none of it.
    const start = process.threadCpuUsage();
    turn({ azimuthDegrees: 142, elevationDegrees: 14 + (n % 9) });
    const { user, system } = process.threadCpuUsage(start);
    best = Math.min(best, (user + system) / 1000);
  }
  expect(best).toBeLessThan(1000 / 20 / 4);
});
