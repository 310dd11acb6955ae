import type { Board } from './field.ts';
import { drawnOut, ease, noise, rough } from './noise.ts';
import { type Point, radians } from './stamp.ts';

/** How far an edge strays at two sizes, about −1 to 1: long bays, and small nicks in some of them only. */
export const stray = (x: number, y: number, size: number, seed: number): number => {
  const u = x * 0.8 + y * 0.6;
  const v = y * 0.8 - x * 0.6;
  const nicks = Math.max(0, 0.6 + noise(u / (size * 1.9), v / (size * 1.9), seed + 2));
  return (
    0.75 * noise(u / size, v / size, seed) +
    0.4 * nicks * noise((u * 0.6 + v * 0.8) / (size * 0.27), (v * 0.6 - u * 0.8) / (size * 0.27), seed + 1)
  );
};

/** What is left of a rim at a place, 0–1: full here, thin there, gone for part of the way. */
export const remnant = (x: number, y: number, size: number, seed: number): number =>
  ease(
    -0.22,
    0.55,
    noise(x / size, y / size, seed) + 0.35 * noise(x / (size * 0.3), y / (size * 0.3), seed + 1),
  );

/** How much of a thin haze keeps hold at a place, about 0.3 to 1.6: it is a fine grain without a direction. */
export const settled = (x: number, y: number, seed: number): number =>
  Math.max(
    0.2,
    0.97 +
      0.42 * rough(x / 5, y / 4.4, seed, 3) +
      0.16 * noise((x + 0.4 * y) / 0.7, (y - 0.4 * x) / 0.7, seed + 4) +
      0.1 * noise(x / 0.29, y / 0.29, seed + 5),
  );

/** How much farther one fiber or bristle carries than the next, mm: little as a rule, far here and there. */
export const carried = (x: number, y: number, far: number, seed: number): number => {
  const fine = drawnOut(x, y, 9, 0.45, seed);
  const strand = drawnOut(x, y, 12, 1.3, seed + 1);
  const broad = rough(x / 14, y / 5, seed + 2, 2);
  return far * (0.7 * broad + 0.4 * strand + 1.1 * fine * fine * fine);
};

/** Patches of noise, 0 outside to 1 inside; `share` is about how much of the board they take. */
export const patches =
  (sizeMm: number, seed: number, share: number, soft: number) =>
  (x: number, y: number): number => {
    const level = (0.5 - share) * 0.8;
    const u = x / sizeMm;
    const v = y / sizeMm;
    const du = 0.3 * noise(u * 1.3 + 5.3, v * 1.3, seed + 31) + 0.09 * noise(u * 4.1, v * 4.1, seed + 32);
    const dv = 0.3 * noise(u * 1.3, v * 1.3 + 9.1, seed + 33) + 0.09 * noise(u * 4.1, v * 4.1, seed + 34);
    return ease(level - soft / 2, level + soft / 2, rough(u + du, v + dv, seed, 2));
  };

/** Distance outside (+) or inside (−) a ragged round blot, mm. */
export const blot =
  ([cx, cy]: Point, radius: number, seed: number, ragged: number, stretch = 1, degrees = 0) =>
  (x: number, y: number): number => {
    const turn = radians(degrees);
    const u = ((x - cx) * Math.cos(turn) + (y - cy) * Math.sin(turn)) / stretch;
    const v = -(x - cx) * Math.sin(turn) + (y - cy) * Math.cos(turn);
    const s = radius * 1.5;
    // Pushed out of round as a whole, then nicked: what only swells and shrinks along its rays has corners.
    const pu = u + ragged * radius * 0.85 * noise(u / s + 7.4, v / s + 3.6, seed);
    const pv = v + ragged * radius * 0.85 * noise(u / s + 1.3, v / s + 8.2, seed + 57);
    return (
      Math.sqrt(pu * pu + pv * pv) -
      radius * (1 + 0.55 * ragged * stray(u + 91, v + 37, radius * 0.8, seed + 3))
    );
  };

/** Joins two outlines as drops run together: the smaller distance, rounded off in the corner between them. */
export const joined = (a: number, b: number, round: number): number => {
  const h = Math.max(0, round - Math.abs(a - b)) / round;
  return Math.min(a, b) - h * h * round * 0.25;
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
