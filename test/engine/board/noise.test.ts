/**
 * Chance and noise that all boards are drawn with. Laws of what they are: uniform numbers (mean 1/2, variance 1/12, no
 * memory), gradient noise (Perlin, An Image Synthesizer, SIGGRAPH 1985: nothing at whole places, smooth over their
 * borders), and distances to scattered points (Worley, A Cellular Texture Basis Function, SIGGRAPH 1996: no distance
 * changes faster than the place does).
 */
import { describe, expect, it } from 'vitest';
import { between, cells, ease, noise, random, rough, start } from '#engine/board/noise.ts';

const SEEDS = [1, 7, 2026, -5];
const many = (count: number, make: (at: number) => number) =>
  Array.from({ length: count }, (_, at) => make(at));
const mean = (all: readonly number[]) => all.reduce((sum, one) => sum + one, 0) / all.length;
/** How much two lists go together, −1 to 1. */
const together = (one: readonly number[], other: readonly number[]) => {
  const [a, b] = [mean(one), mean(other)];
  const of = (x: readonly number[], y: readonly number[], p: number, q: number) =>
    mean(x.map((value, at) => (value - p) * ((y[at] ?? 0) - q)));
  return of(one, other, a, b) / Math.sqrt(of(one, one, a, a) * of(other, other, b, b));
};

describe('random numbers', () => {
  it('are spread evenly over 0 to 1 and do not hang together', () => {
    for (const seed of SEEDS) {
      const next = random(seed);
      const drawn = many(20_000, next);
      expect(drawn.every((one) => one >= 0 && one < 1)).toBe(true);
      // A standard error is 0.002 of the mean and 0.0005 of the variance.
      expect(Math.abs(mean(drawn) - 1 / 2)).toBeLessThan(0.01);
      expect(Math.abs(mean(drawn.map((one) => (one - 1 / 2) ** 2)) - 1 / 12)).toBeLessThan(0.0025);
      expect(Math.abs(together(drawn.slice(1), drawn.slice(0, -1)))).toBeLessThan(0.035);
      const tenths = many(10, (at) => drawn.filter((one) => Math.floor(one * 10) === at).length);
      for (const count of tenths) expect(Math.abs(count - 2000)).toBeLessThan(200);
    }
  });

  it('are others for each start, and each feature of a board has its own', () => {
    const starts = SEEDS.flatMap((seed) => many(40, (n) => start(seed, n)));
    expect(new Set(starts).size).toBe(starts.length);
    const [one, other] = [random(start(1, 10)), random(start(1, 11))];
    expect(Math.abs(together(many(5000, one), many(5000, other)))).toBeLessThan(0.06);
  });

  it('between two numbers favor the lower end by the power: a mean of 1/(1 + bias) of the way', () => {
    for (const bias of [1, 2, 3]) {
      const next = random(9);
      const drawn = many(20_000, () => between(next, 4, 10, bias));
      expect(drawn.every((one) => one >= 4 && one <= 10)).toBe(true);
      expect(Math.abs((mean(drawn) - 4) / 6 - 1 / (1 + bias))).toBeLessThan(0.01);
    }
  });
});

describe('noise', () => {
  it('is nothing at whole places, whichever way it leans there, and about −1 to 1 between them', () => {
    for (const seed of SEEDS)
      for (let at = -6; at < 6; at++) {
        expect(noise(at, 2 * at - 3, seed)).toBeCloseTo(0, 12);
        for (const part of [0.2, 0.5, 0.7])
          expect(Math.abs(noise(at + part, at * part, seed))).toBeLessThanOrEqual(1.5);
      }
    const all = many(20_000, (at) => noise(at * 0.377, at * 0.0913, 3));
    expect(Math.abs(mean(all))).toBeLessThan(0.02);
    expect(Math.max(...all)).toBeGreaterThan(0.7);
    expect(Math.min(...all)).toBeLessThan(-0.7);
  });

  it('goes on without a step or a bend over the borders of its squares', () => {
    const [tiny, slope] = [1e-6, 1e-3];
    for (const seed of SEEDS)
      for (let at = 0; at < 60; at++) {
        const [whole, along] = [(at % 9) - 4, 0.17 + at * 0.31];
        const over: ((off: number) => number)[] = [
          (off) => noise(whole + off, along, seed),
          (off) => noise(along, whole + off, seed),
        ];
        for (const near of over) {
          expect(Math.abs(near(tiny) - near(-tiny))).toBeLessThan(1e-5);
          const [before, after] = [near(0) - near(-slope), near(slope) - near(0)];
          expect(Math.abs(after - before)).toBeLessThan(2e-5);
        }
      }
  });

  it('rises as steeply as its leanings say: over one square it is the fade of four slopes', () => {
    // From the slopes at the four corners alone, found by a small step, the middle follows: each counts a quarter.
    const step = 1e-6;
    for (const seed of SEEDS)
      for (let at = 0; at < 12; at++) {
        const [x, y] = [at - 5, 3 - at];
        let sum = 0;
        for (const [dx, dy] of [
          [0, 0],
          [1, 0],
          [0, 1],
          [1, 1],
        ] as const) {
          const here = (u: number, v: number) => noise(x + dx + u, y + dy + v, seed);
          const [alongX, alongY] = [here(step, 0) / step, here(0, step) / step];
          // Steps of length one, in one of eight directions.
          expect(Math.hypot(alongX, alongY) / 1.5).toBeCloseTo(1, 4);
          sum += (alongX * (0.5 - dx) + alongY * (0.5 - dy)) / 4;
        }
        expect(noise(x + 0.5, y + 0.5, seed)).toBeCloseTo(sum, 4);
      }
  });

  it('of another seed is another', () => {
    const at = (seed: number) => many(4000, (n) => noise(n * 0.377, n * 0.0913, seed));
    expect(Math.abs(together(at(1), at(2)))).toBeLessThan(0.1);
  });

  it('summed rough has half the weight at half the size', () => {
    const step = (octaves: number) =>
      many(8000, (n) => rough(n * 0.77, n * 0.193, 5, octaves) - rough(n * 0.77, n * 0.193, 5, octaves - 1));
    const size = (octaves: number) => Math.sqrt(mean(step(octaves).map((one) => one * one)));
    expect(rough(3.3, 1.7, 5, 0)).toBe(0);
    expect(size(1)).toBeCloseTo(
      1.25 * 0.5 * Math.sqrt(mean(many(8000, (n) => noise(n * 0.77, n * 0.193, 1) ** 2))),
      1,
    );
    expect(size(2) / size(1)).toBeCloseTo(0.5, 1);
    expect(size(3) / size(2)).toBeCloseTo(0.5, 1);
    // Half the size: it changes as much over half the way.
    const change = (octaves: number, way: number) => {
      const one = (x: number, y: number) => rough(x, y, 5, octaves) - rough(x, y, 5, octaves - 1);
      return mean(many(4000, (n) => Math.abs(one(n * 1.7 + way, n * 0.93) - one(n * 1.7, n * 0.93))));
    };
    expect(change(2, 0.01) / change(1, 0.02)).toBeCloseTo(0.5, 1);
  });
});

describe('ease', () => {
  it('goes from 0 to 1 between its ends, level at both, half in the middle', () => {
    expect([ease(2, 6, 1), ease(2, 6, 2), ease(2, 6, 4), ease(2, 6, 6), ease(2, 6, 9)]).toEqual([
      0, 0, 0.5, 1, 1,
    ]);
    for (let at = 0; at < 40; at++) {
      const [low, high] = [2 + at * 0.1, 2.1 + at * 0.1];
      expect(ease(2, 6, high)).toBeGreaterThan(ease(2, 6, low));
      // Turned about its middle it is the same.
      expect(ease(2, 6, low) + ease(2, 6, 8 - low)).toBeCloseTo(1, 12);
      expect(ease(6, 2, low)).toBeCloseTo(1 - ease(2, 6, low), 12);
    }
    expect(ease(0, 1, 0.001)).toBeLessThan(1e-5);
  });
});

describe('distances to scattered points', () => {
  const at = (x: number, y: number, seed: number) => {
    const out = { first: 0, second: 0, id: 0 };
    cells(x, y, seed, out);
    return out;
  };

  it('change no faster than the place does, over every border', () => {
    const next = random(4);
    for (let n = 0; n < 3000; n++) {
      const [x, y] = [between(next, -8, 8), between(next, -8, 8)];
      const [dx, dy] = [between(next, -0.2, 0.2), between(next, -0.2, 0.2)];
      const [here, there] = [at(x, y, 6), at(x + dx, y + dy, 6)];
      const way = Math.hypot(dx, dy) + 1e-9;
      expect(here.first).toBeLessThanOrEqual(here.second);
      expect(Math.abs(here.first - there.first)).toBeLessThanOrEqual(way);
      if (here.second < 1 && there.second < 1)
        expect(Math.abs(here.second - there.second)).toBeLessThanOrEqual(way);
    }
  });

  it('lead to one point in each square, which has an own number and stands off the border', () => {
    const points = new Map<number, string>();
    for (let cx = 0; cx < 8; cx++)
      for (let cy = 0; cy < 8; cy++) {
        // Looked for from 400 places in its square; its number is told where it is the nearest.
        let found: readonly [number, number] | undefined;
        for (let n = 0; n < 400 && !found; n++) {
          const [x, y] = [cx + (n % 20) / 20 + 0.025, cy + Math.floor(n / 20) / 20 + 0.025];
          const here = at(x, y, 6);
          if (here.first < 0.045) found = [x, y];
          if (found) points.set(here.id, `${cx} ${cy}`);
        }
        expect(found, `${cx} ${cy}`).toBeDefined();
        const [x = 0, y = 0] = found ?? [];
        for (const place of [x - cx, y - cy]) {
          expect(place).toBeGreaterThan(0.12 - 0.05);
          expect(place).toBeLessThan(0.88 + 0.05);
        }
      }
    expect(points.size).toBe(64);
  });
});
