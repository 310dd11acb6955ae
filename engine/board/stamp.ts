import type { Board } from './field.ts';
import { between, type Random } from './noise.ts';

export type Point = readonly [number, number];

/**
 * Calls `visit` for the pixels within a radius (mm) with the offset from the center in mm,
 * and at least once, so that a body finer than a pixel is not lost.
 */
export const disc = (
  b: Board,
  [x, y]: Point,
  radius: number,
  visit: (i: number, distance: number, dx: number, dy: number) => void,
): void => {
  const reach = Math.max(radius, b.pitch * 0.72);
  const left = Math.max(0, Math.floor((x - reach) / b.pitch));
  const right = Math.min(b.columns - 1, Math.floor((x + reach) / b.pitch));
  const top = Math.max(0, Math.floor((y - reach) / b.pitch));
  const bottom = Math.min(b.rows - 1, Math.floor((y + reach) / b.pitch));
  for (let row = top; row <= bottom; row++) {
    const dy = (row + 0.5) * b.pitch - y;
    for (let column = left; column <= right; column++) {
      const dx = (column + 0.5) * b.pitch - x;
      const distance = Math.sqrt(dx * dx + dy * dy);
      if (distance <= reach) visit(row * b.columns + column, distance, dx, dy);
    }
  }
};

/** Share of a pixel that a body covers whose edge is `inside` mm beyond the pixel's center. */
export const cover = (b: Board, inside: number, thickness: number): number =>
  Math.min(1, thickness / b.pitch) * Math.min(1, Math.max(0, inside / b.pitch + 0.5));

/**
 * Distance to the line under work, and how far along it that is; infinite where it is not near. Cleared after each
 * line.
 */
let nearest = new Float32Array(0);
let runs = new Float32Array(0);

/** Calls `visit` once for each pixel within `reach` mm of a line through the points. */
export const stroke = (
  b: Board,
  points: readonly Point[],
  reach: number,
  visit: (i: number, distance: number, along: number) => void,
): void => {
  if (nearest.length < b.height.length) {
    nearest = new Float32Array(b.height.length).fill(Number.POSITIVE_INFINITY);
    runs = new Float32Array(b.height.length);
  }
  const met: number[] = [];
  const wide = Math.max(reach, b.pitch * 0.72);
  let run = 0;
  for (let p = 1; p < points.length; p++) {
    const [x0, y0] = points[p - 1]!;
    const [x1, y1] = points[p]!;
    const length = Math.hypot(x1 - x0, y1 - y0);
    if (length === 0) continue;
    const ux = (x1 - x0) / length;
    const uy = (y1 - y0) / length;
    const left = Math.max(0, Math.floor((Math.min(x0, x1) - wide) / b.pitch));
    const right = Math.min(b.columns - 1, Math.floor((Math.max(x0, x1) + wide) / b.pitch));
    const top = Math.max(0, Math.floor((Math.min(y0, y1) - wide) / b.pitch));
    const bottom = Math.min(b.rows - 1, Math.floor((Math.max(y0, y1) + wide) / b.pitch));
    for (let row = top; row <= bottom; row++) {
      const py = (row + 0.5) * b.pitch - y0;
      for (let column = left; column <= right; column++) {
        const px = (column + 0.5) * b.pitch - x0;
        const t = Math.min(length, Math.max(0, px * ux + py * uy));
        const distance = Math.sqrt((px - t * ux) ** 2 + (py - t * uy) ** 2);
        if (distance > wide) continue;
        const i = row * b.columns + column;
        if (distance >= nearest[i]!) continue;
        if (nearest[i] === Number.POSITIVE_INFINITY) met.push(i);
        nearest[i] = distance;
        runs[i] = run + t;
      }
    }
    run += length;
  }
  for (const i of met) {
    const distance = nearest[i]!;
    nearest[i] = Number.POSITIVE_INFINITY;
    visit(i, distance, runs[i]!);
  }
};

/** The given place, or one in the middle half of the board. */
export const placed = (b: Board, next: Random, at: Point | undefined): Point => {
  const x = between(next, 0.36, 0.64) * b.widthMm;
  const y = between(next, 0.4, 0.6) * b.heightMm;
  return at ?? [x, y];
};

/** A line that wanders: `curl` 0 straight, 1 strongly bent. Steps of `step` mm. */
export const wander = (
  next: Random,
  from: Point,
  heading: number,
  length: number,
  curl: number,
  step: number,
): Point[] => {
  const points: Point[] = [from];
  let [x, y] = from;
  let direction = heading;
  let bend = (next() - 0.5) * curl * 0.3;
  for (let run = 0; run < length; run += step) {
    bend = bend * 0.93 + (next() - 0.5) * curl * 0.16 * Math.sqrt(step);
    direction += bend * step;
    x += Math.cos(direction) * step;
    y += Math.sin(direction) * step;
    points.push([x, y]);
  }
  return points;
};

/** A line that runs down an upright face, `sway` mm to either side. */
export const trickle = (next: Random, [x, y]: Point, length: number, sway: number): Point[] => {
  const phase = next() * 6.28;
  const points: Point[] = [];
  for (let run = 0; run <= length; run += 0.8) {
    const swing = Math.sin(phase + run / 9) + 0.6 * Math.sin(2 * phase + run / 4.1);
    points.push([x + sway * swing * Math.min(1, run / 8), y + run]);
  }
  return points;
};

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
