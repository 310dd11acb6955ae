import type { Board } from './field.ts';
import { ease, rough } from './noise.ts';
import { type Point, radians } from './stamp.ts';

/** Patches of noise, 0 outside to 1 inside; `share` is about how much of the board they take. */
export const patches =
  (sizeMm: number, seed: number, share: number, soft: number) =>
  (x: number, y: number): number => {
    const level = (0.5 - share) * 0.8;
    const u = x / sizeMm;
    const v = y / sizeMm;
    const bend = 0.35 * rough(u * 1.7, v * 1.7, seed + 31, 1);
    return ease(level - soft / 2, level + soft / 2, rough(u + bend, v - bend, seed, 2));
  };

/** Distance outside (+) or inside (−) a ragged round blot, mm. */
export const blot =
  ([cx, cy]: Point, radius: number, seed: number, ragged: number, stretch = 1, degrees = 0) =>
  (x: number, y: number): number => {
    const turn = radians(degrees);
    const u = ((x - cx) * Math.cos(turn) + (y - cy) * Math.sin(turn)) / stretch;
    const v = -(x - cx) * Math.sin(turn) + (y - cy) * Math.cos(turn);
    const scale = radius * 0.9;
    return (
      Math.sqrt(u * u + v * v) - radius * (1 + ragged * rough(u / scale + 7.4, v / scale + 3.6, seed, 2))
    );
  };

/** Distance to the nearest corner as a share of the half diagonal, 0 in the corner. */
export const fromCorner = (b: Board, x: number, y: number): number =>
  Math.hypot(Math.min(x, b.widthMm - x), Math.min(y, b.heightMm - y)) /
  (0.5 * Math.hypot(b.widthMm, b.heightMm));

/** Turns a place into (along, across) of a direction. */
export const turned = (degrees: number) => {
  const cosine = Math.cos(radians(degrees));
  const sine = Math.sin(radians(degrees));
  return {
    along: (x: number, y: number): number => x * cosine + y * sine,
    across: (x: number, y: number): number => y * cosine - x * sine,
  };
};
