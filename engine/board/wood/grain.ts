import { between, noise, random, start } from '../noise.ts';

/** How a board was sawn from its log: where its rings lie, and how its fibers run. */
export type Grain = {
  /** Whole numbers are ring borders; `fiber` is the place across the fibers. */
  ring: (x: number, y: number, fiber: number) => number;
  /** Place across the fibers, mm: the same all along a fiber. The grain runs along the board. */
  across: (x: number, y: number) => number;
  /** Distance from the middle of the knot over its radius, less than 1 in it; infinite where there is none. */
  knot: (x: number, y: number) => number;
};

/** Middle of a knot, mm. */
export type Knot = readonly [number, number];
const KNOT_MM = [4, 7] as const;
/** How far the fibers round a knot are moved at most, over its radius. */
const AROUND = 0.97;

/**
 * Share of boards on which the heart of the log lies below the picture, and the rings close in arches; in a close view
 * they would only seem to end.
 */
const ARCHED = 0.35;
/** Share of boards sawn toward the heart: their rings stand upright and show as straight, narrow lines. */
const QUARTERED = 0.3;
/** How much narrower rings lie on such a board: elsewhere the face cuts them aslant. */
const UPRIGHT = 0.62;
/** Share of boards with a knot beyond the picture, round which all fibers bend; how far, and how wide, mm. */
const BENT = 0.5;
const BENT_MM = [4, 11] as const;
const BENT_WIDE_MM = [22, 45] as const;

/** A cut at random through a log whose rings are cones around its heart. */
export const sawn = (widthMm: number, heightMm: number, ringMm: number, seed: number, at?: Knot): Grain => {
  const next = random(start(seed, 0));
  const chance = next();
  const arched = widthMm >= 55 && chance < ARCHED;
  const quartered = chance > 1 - QUARTERED;
  const above = next() < 0.5;
  const off = arched ? heightMm * between(next, 0.3, 0.7) : -between(next, 10, 70) * (quartered ? 3 : 1);
  const heart = above ? off : heightMm - off;
  const deep = quartered ? between(next, 2, 20) : between(next, 25, 70);
  const wide = ringMm * (quartered ? UPRIGHT : 1) * between(next, 0.75, 1.25);
  const taper = between(next, 0.06, arched ? 0.32 : 0.16) * (next() < 0.5 ? -1 : 1) * (quartered ? 0.4 : 1);
  const bent = next() < BENT ? between(next, ...BENT_MM) * (next() < 0.5 ? -1 : 1) : 0;
  const bentX = next() * widthMm;
  const bentY = bent > 0 ? -5 : heightMm + 5;
  const bentWide = between(next, ...BENT_WIDE_MM);
  const radius = between(next, ...KNOT_MM);
  const knot = (x: number, y: number): number =>
    at === undefined ? Number.POSITIVE_INFINITY : Math.hypot((x - at[0]) / 1.25, y - at[1]) / radius;
  const straight = (x: number, y: number): number => {
    const v = y + 2.6 * noise(x / 70, y / 45, seed) + 0.35 * noise(x / 17, y / 5, seed + 1);
    if (bent === 0) return v;
    const [u, w] = [(x - bentX) / bentWide, (y - bentY) / bentWide];
    return v - bent * Math.exp(-(u * u + w * w));
  };
  // Fibers part at a knot and close behind it as water does round a stone.
  const across = (x: number, y: number): number => {
    const v = straight(x, y);
    if (at === undefined) return v;
    const middle = straight(at[0], at[1]);
    const far = Math.max(1, knot(x, y));
    return middle + (v - middle) * (1 - AROUND / far ** 2);
  };
  const ring = (x: number, y: number, fiber: number): number => {
    const down = deep + taper * (x - widthMm / 2) + 5 * noise(x / 60, y / 34, seed + 2);
    const side = fiber - heart;
    const out = Math.sqrt(down * down + side * side) + 0.45 * noise(x / 24, fiber / 3.2, seed + 3);
    // Wide rings in good years, narrow ones in bad.
    return out / wide + 0.9 * noise(out / (3.1 * wide), 0.5, seed + 4);
  };
  return { ring, across, knot };
};

/** From early wood, 0, to the darkest late wood, 1, by where in its ring a place lies. */
export const growth = (part: number, onset: number): number =>
  part < 0.9 ? (part / 0.9) ** onset : 1 - (part - 0.9) / 0.1;
