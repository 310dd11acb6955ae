import { type Board, raise, tint } from '../field.ts';
import { between, ease, noise, type Random } from '../noise.ts';
import type { Flecks, Vessels } from './figure.ts';
import type { Grain } from './grain.ts';

/** A line along the fibers: where it begins, how long and how wide it is, mm. */
type Along = {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly half: number;
};

/** More than these are not told apart in a picture. */
const MOST = 9000;
/** How long a line runs before the fiber is asked again where it goes, mm. */
const BETWEEN = 1.2;
/** How much its width wavers. */
const WORN = 0.55;
/** And how far it strays from its fiber, mm. */
const ASTRAY = 0.05;
/** Share of vessels that split into two, which run on side by side, and how far apart these lie, mm. */
const SPLIT = 0.3;
const APART = [0.1, 0.34] as const;

/** How deep a line lies over its length, 0–1: one end enters the surface soon, the other leaves it little by little. */
const opening = (t: number, turned: boolean): number => {
  const s = turned ? 1 - t : t;
  return ease(0, 0.2, s) * ease(0, 0.6, 1 - s);
};

/** Calls `visit` for each pixel of a line, with the share of it that the line opens. */
const follow = (
  b: Board,
  grain: Grain,
  line: Along,
  turned: boolean,
  visit: (i: number, share: number) => void,
): void => {
  const { pitch, columns, rows } = b;
  const first = Math.max(0, Math.floor(line.x / pitch));
  const last = Math.min(columns - 1, Math.ceil((line.x + line.length) / pitch));
  const fiber = grain.across(line.x, line.y);
  let [from, y0, y1] = [Number.NEGATIVE_INFINITY, line.y, line.y];
  for (let column = first; column <= last; column++) {
    const x = (column + 0.5) * pitch;
    const t = (x - line.x) / line.length;
    if (t <= 0 || t >= 1) continue;
    if (x - from > BETWEEN) {
      from = x;
      y0 = line.y + fiber - grain.across(x, line.y);
      y1 = line.y + fiber - grain.across(x + BETWEEN, line.y);
    }
    const y = y0 + ((y1 - y0) * (x - from)) / BETWEEN + ASTRAY * noise(x / 1.9, line.y * 5, 3);
    // Its walls are worn, and it thins out to its ends and grows shallow there.
    const open = opening(t, turned);
    const half = line.half * (0.45 + 0.55 * open) * (1 + WORN * noise(x / 0.7, line.y * 9, 1));
    // It dips below the face for a while, or is closed by what grew or settled in it.
    const closed = noise(x / 2.6, line.y * 7, 2) + 0.45 * noise(x / 0.6, line.y * 8, 4);
    const clear = open * ease(0.62, -0.3, closed);
    if (half <= 0 || clear < 0.02) continue;
    const top = Math.max(0, Math.floor((y - half) / pitch));
    const bottom = Math.min(rows - 1, Math.floor((y + half) / pitch));
    for (let row = top; row <= bottom; row++) {
      const upper = Math.max(row * pitch, y - half);
      const lower = Math.min((row + 1) * pitch, y + half);
      if (lower > upper) visit(row * columns + column, (clear * (lower - upper)) / pitch);
    }
  }
};

const scattered = (b: Board, perCm2: number): number =>
  Math.min(MOST, Math.round((perCm2 * b.widthMm * b.heightMm) / 100));

/** Long ones are rare. */
const lengthOf = (next: Random, [short, long]: readonly [number, number]): number =>
  short * (long / short) ** (next() ** 1.15);

/** Opens the vessels of the wood: lines of all lengths, most of them in the early wood. */
export const openVessels = (b: Board, grain: Grain, v: Vessels, next: Random): void => {
  for (let n = scattered(b, v.perCm2); n > 0; n--) {
    const length = lengthOf(next, v.lengthMm);
    const x = next() * (b.widthMm + length) - length;
    const y = next() * b.heightMm;
    const middle = x + length / 2;
    const ring = grain.ring(middle, y, grain.across(middle, y));
    const inZone = ring - Math.floor(ring) < v.zone * (0.75 + 0.5 * next());
    const wide = between(next, v.widthMm[0], v.widthMm[1], 1.6);
    const chance = next();
    const turned = next() < 0.5;
    const deep = between(next, 0.18, 1, 1.3);
    const splits = next() < SPLIT;
    const apart = between(next, ...APART) * (next() < 0.5 ? -1 : 1);
    if ((!inZone && chance > 0.1) || grain.knot(middle, y) < 1.1) continue;
    const half = (inZone ? wide : v.widthMm[0]) / 2;
    const line = { x, y, length: inZone ? length : length * 0.4, half };
    const open = (i: number, share: number) => {
      tint(b, i, v.color, share * deep * 0.85);
      raise(b, i, -v.depthUm * share * deep);
    };
    follow(b, grain, line, turned, open);
    if (splits && inZone)
      follow(b, grain, { x: middle, y: y + apart, length: length * 0.7, half: half * 0.7 }, !turned, open);
  }
};

export const drawFlecks = (b: Board, grain: Grain, f: Flecks, next: Random): void => {
  for (let n = scattered(b, f.perCm2); n > 0; n--) {
    const length = lengthOf(next, f.lengthMm);
    const line = {
      x: next() * (b.widthMm + length) - length,
      y: next() * b.heightMm,
      length,
      half: (f.widthMm * between(next, 0.5, 1.2)) / 2,
    };
    const deep = f.cover * between(next, 0.3, 1.2);
    follow(b, grain, line, next() < 0.5, (i, share) => tint(b, i, f.color, share * deep));
  }
};
