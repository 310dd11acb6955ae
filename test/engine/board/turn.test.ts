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

/** One power a channel and no more: what putting colors on a screen costs by itself. */
const toneCurve = () => {
  const channels = new Float64Array(240 * 180 * 3);
  for (let at = 0; at < channels.length; at++) channels[at] = ((at % 256) / 255) ** 2.2;
  return channels;
};

/** Milliseconds of this thread alone: what else the machine does is none of it. */
const costOf = (work: () => unknown): number => {
  const start = process.threadCpuUsage();
  work();
  const { user, system } = process.threadCpuUsage(start);
  return (user + system) / 1000;
};

it('shades a frame for a few times the price of its tone curve', () => {
  // 2.0 to 3.0 times on the machine where a frame took 8 ms: 20 a second on a phone a quarter as fast.
  let shading = 0;
  let yardstick = 0;
  for (let n = 0; n < 40; n++) {
    shading += costOf(() => turn({ azimuthDegrees: 142, elevationDegrees: 14 + (n % 9) }));
    yardstick += costOf(toneCurve);
  }
  expect(shading / yardstick).toBeLessThan(5);
});
