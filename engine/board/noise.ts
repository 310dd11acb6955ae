/** Same numbers for the same start on every machine: 32-bit integer mixing, no Math.random. */
export type Random = () => number;

const mix = (value: number): number => {
  let v = value | 0;
  v = Math.imul(v ^ (v >>> 16), 0x7feb352d);
  v = Math.imul(v ^ (v >>> 15), 0x846ca68b);
  return (v ^ (v >>> 16)) >>> 0;
};

/** A start of its own for the n-th feature of a board. */
export const start = (seed: number, n: number): number =>
  mix(mix(seed + 0x9e3779b9) ^ Math.imul(n + 1, 0x85ebca6b));

/** Uniform numbers, 0 up to but not 1. */
export const random = (from: number): Random => {
  let state = from | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    return mix(state) / 4294967296;
  };
};

/** Between two numbers; `bias` above 1 favors the lower end, as small bubbles are more frequent than large. */
export const between = (next: Random, low: number, high: number, bias = 1): number =>
  low + (high - low) * next() ** bias;

const DIAGONAL = Math.SQRT1_2;
/**
 * The eight directions that a corner can lean to, as tables: a branch on a random number is guessed wrong half the
 * time.
 */
const LEAN_X = Float64Array.of(-DIAGONAL, DIAGONAL, -DIAGONAL, DIAGONAL, -1, 1, 0, 0);
const LEAN_Y = Float64Array.of(-DIAGONAL, -DIAGONAL, DIAGONAL, DIAGONAL, 0, 0, -1, 1);
const PRIME_X = 0x27d4eb2f;
const PRIME_Y = 0x165667b1;

/** Gradient noise at a point, about −1 to 1, one swell per unit (Perlin's construction, quintic fade). */
export const noise = (x: number, y: number, seed: number): number => {
  const x0 = Math.floor(x);
  const y0 = Math.floor(y);
  const dx = x - x0;
  const dy = y - y0;
  const u = dx * dx * dx * (dx * (dx * 6 - 15) + 10);
  const v = dy * dy * dy * (dy * (dy * 6 - 15) + 10);
  const left = Math.imul(x0, PRIME_X);
  const right = (left + PRIME_X) | 0;
  const above = Math.imul(y0, PRIME_Y) ^ seed;
  const below = ((Math.imul(y0, PRIME_Y) + PRIME_Y) | 0) ^ seed;
  const a = mix(left ^ above) & 7;
  const b = mix(right ^ above) & 7;
  const c = mix(left ^ below) & 7;
  const d = mix(right ^ below) & 7;
  const atA = dx * (LEAN_X[a] as number) + dy * (LEAN_Y[a] as number);
  const atB = (dx - 1) * (LEAN_X[b] as number) + dy * (LEAN_Y[b] as number);
  const atC = dx * (LEAN_X[c] as number) + (dy - 1) * (LEAN_Y[c] as number);
  const atD = (dx - 1) * (LEAN_X[d] as number) + (dy - 1) * (LEAN_Y[d] as number);
  const top = atA + u * (atB - atA);
  return 1.5 * (top + v * (atC + u * (atD - atC) - top));
};

/** So far a lane of drawn out noise begins beside its neighbor, in lengths: no grid of ends shows. */
const ASIDE = 0.63;

/** Noise drawn out along x: swells so long and so wide, each lane of them begun at a place of its own. */
export const drawnOut = (x: number, y: number, long: number, wide: number, seed: number): number =>
  noise(x / long + (ASIDE * y) / wide, y / wide, seed);

/** Sum of noise at halving sizes, about −1 to 1; each is turned, so that no grid shows. */
export const rough = (x: number, y: number, seed: number, octaves: number): number => {
  let sum = 0;
  let weight = 0.5;
  let u = x * 0.8 + y * 0.6;
  let v = y * 0.8 - x * 0.6;
  for (let o = 0; o < octaves; o++) {
    sum += weight * noise(u, v, seed + o * 101);
    const turned = 2 * (u * 0.8 + v * 0.6);
    v = 2 * (v * 0.8 - u * 0.6);
    u = turned;
    weight *= 0.5;
  }
  return sum * 1.25;
};

/** 0 below `low`, 1 above `high`, smooth between. */
export const ease = (low: number, high: number, value: number): number => {
  const t = Math.min(1, Math.max(0, (value - low) / (high - low)));
  return t * t * (3 - 2 * t);
};

/** Distances, in cells, to the nearest and the second nearest of one point a cell (Worley's construction). */
export const cells = (
  x: number,
  y: number,
  seed: number,
  out: { first: number; second: number; id: number },
) => {
  const x0 = Math.floor(x);
  const y0 = Math.floor(y);
  let first = 9;
  let second = 9;
  let id = 0;
  for (let j = -1; j <= 1; j++) {
    for (let k = -1; k <= 1; k++) {
      const h = mix(Math.imul(x0 + k, PRIME_X) ^ Math.imul(y0 + j, PRIME_Y) ^ seed);
      const dx = k + 0.12 + 0.76 * ((h & 0xffff) / 65536) - (x - x0);
      const dy = j + 0.12 + 0.76 * ((h >>> 16) / 65536) - (y - y0);
      const distance = dx * dx + dy * dy;
      if (distance < first) {
        second = first;
        first = distance;
        id = h;
      } else if (distance < second) second = distance;
    }
  }
  out.first = Math.sqrt(first);
  out.second = Math.sqrt(second);
  out.id = id;
};
