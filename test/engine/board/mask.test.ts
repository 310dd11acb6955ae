/** Outlines and masks that flaws are cut with: laws of plane geometry, and shares that keep between none and all. */
import { describe, expect, it } from 'vitest';
import { blankBoard } from '#engine/board/field.ts';
import {
  blot,
  carried,
  fromCorner,
  joined,
  patches,
  remnant,
  settled,
  stray,
  turned,
} from '#engine/board/mask.ts';
import { between, random } from '#engine/board/noise.ts';

const next = random(11);
const places = Array.from({ length: 3000 }, () => [between(next, 0, 60), between(next, 0, 45)] as const);
const mean = (all: readonly number[]) => all.reduce((sum, one) => sum + one, 0) / all.length;

describe('a direction', () => {
  it('keeps lengths, lies along the board at 0°, across it at 90°, and half way at 45°', () => {
    for (const degrees of [0, 30, 45, 90, -60])
      for (const [x, y] of places.slice(0, 50)) {
        const { along, across } = turned(degrees);
        expect(Math.hypot(along(x, y), across(x, y))).toBeCloseTo(Math.hypot(x, y), 9);
        const turn = (degrees * Math.PI) / 180;
        expect(along(Math.cos(turn), Math.sin(turn))).toBeCloseTo(1, 9);
        expect(across(Math.cos(turn), Math.sin(turn))).toBeCloseTo(0, 9);
        expect(across(-Math.sin(turn), Math.cos(turn))).toBeCloseTo(1, 9);
      }
  });
});

describe('the way from the corners', () => {
  it('is 0 in each, 1 in the middle, and the same from all four', () => {
    const board = blankBoard(60, 80, 60);
    const [w, h] = [board.widthMm, board.heightMm];
    for (const [x, y] of [
      [0, 0],
      [w, 0],
      [0, h],
      [w, h],
    ] as const)
      expect(fromCorner(board, x, y)).toBeCloseTo(0, 12);
    expect(fromCorner(board, w / 2, h / 2)).toBeCloseTo(1, 12);
    expect(fromCorner(board, 8, 0)).toBeCloseTo(16 / Math.hypot(w, h), 12);
    for (const [x, y] of places.slice(0, 50)) {
      const here = fromCorner(board, x, y);
      expect(fromCorner(board, w - x, y)).toBeCloseTo(here, 12);
      expect(fromCorner(board, x, h - y)).toBeCloseTo(here, 12);
    }
  });
});

describe('two outlines that run together', () => {
  it('are the nearer of them, filled in the corner between by a quarter of the rounding at most', () => {
    expect(joined(3, 3, 2)).toBeCloseTo(2.5, 12);
    expect(joined(-1, -1, 4)).toBeCloseTo(-2, 12);
    for (const [a, b] of places.slice(0, 300)) {
      expect(joined(a, b, 5)).toBe(joined(b, a, 5));
      expect(joined(a, b, 5)).toBeLessThanOrEqual(Math.min(a, b));
      expect(joined(a, b, 5)).toBeGreaterThanOrEqual(Math.min(a, b) - 5 / 4);
      if (Math.abs(a - b) >= 5) expect(joined(a, b, 5)).toBe(Math.min(a, b));
      expect(Math.abs(joined(a, b, 5) - joined(a + 1e-6, b, 5))).toBeLessThan(2e-6);
    }
  });
});

describe('a blot', () => {
  it('that is not ragged is a circle, and drawn out an oval in its direction', () => {
    const round = blot([30, 20], 6, 3, 0);
    for (const [x, y] of places.slice(0, 100))
      expect(round(x, y)).toBeCloseTo(Math.hypot(x - 30, y - 20) - 6, 9);
    for (const degrees of [0, 30, 90]) {
      const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      const oval = blot([30, 20], 6, 3, 0, 2, degrees);
      expect(oval(30 + 12 * c, 20 + 12 * s)).toBeCloseTo(0, 9);
      expect(oval(30 - 12 * c, 20 - 12 * s)).toBeCloseTo(0, 9);
      expect(oval(30 - 6 * s, 20 + 6 * c)).toBeCloseTo(0, 9);
    }
  });
  it('that is ragged keeps about its size, and strays the more the more ragged it is', () => {
    const area = (ragged: number) =>
      places.filter(([x, y]) => blot([30, 22], 10, 5, ragged)(x, y) < 0).length / places.length;
    const whole = (Math.PI * 100) / (60 * 45);
    for (const ragged of [0, 0.2, 0.4]) expect(area(ragged) / whole).toBeCloseTo(1, 0);
    const strays = (ragged: number) =>
      mean(
        places.map(([x, y]) =>
          Math.abs(blot([30, 22], 10, 5, ragged)(x, y) - blot([30, 22], 10, 5, 0)(x, y)),
        ),
      );
    expect(strays(0.4)).toBeGreaterThan(1.6 * strays(0.2));
    expect(strays(0.2)).toBeGreaterThan(0.3);
    expect(strays(0.2)).toBeLessThan(0.2 * 10);
  });
});

describe('masks', () => {
  it('take about the share of a board that they are told, and more where told more', () => {
    for (const soft of [0.1, 0.6]) {
      const taken = [0.2, 0.4, 0.5, 0.7].map((share) => {
        const mask = patches(7, 8, share, soft);
        const values = places.map(([x, y]) => mask(x * 4, y * 4));
        expect(values.every((one) => one >= 0 && one <= 1)).toBe(true);
        return mean(values);
      });
      for (const [at, share] of [0.2, 0.4, 0.5, 0.7].entries())
        expect(Math.abs((taken[at] ?? 0) - share), `${share}`).toBeLessThan(0.12);
      expect(taken).toEqual([...taken].sort());
    }
  });

  it('of what is left keep between none and all, some of each', () => {
    const left = places.map(([x, y]) => remnant(x, y, 4, 6));
    expect(Math.min(...left)).toBe(0);
    expect(Math.max(...left)).toBe(1);
    expect(mean(left)).toBeGreaterThan(0.2);
    expect(mean(left)).toBeLessThan(0.5);
    const hold = places.map(([x, y]) => settled(x, y, 6));
    expect(Math.min(...hold)).toBeGreaterThanOrEqual(0.2);
    expect(Math.max(...hold)).toBeLessThan(2.2);
    expect(mean(hold)).toBeGreaterThan(0.85);
    expect(mean(hold)).toBeLessThan(1.15);
  });

  it('stray to either side about alike, and carry as far as they are told', () => {
    const strays = places.map(([x, y]) => stray(x, y, 5, 2));
    expect(Math.max(...strays.map(Math.abs))).toBeLessThan(1.6);
    expect(Math.abs(mean(strays))).toBeLessThan(0.08);
    const far = places.map(([x, y]) => carried(x, y, 3, 2));
    expect(far.map((one) => one * 2)).toEqual(places.map(([x, y]) => carried(x, y, 6, 2)));
    expect(Math.abs(mean(far))).toBeLessThan(0.3);
    expect(Math.max(...far.map(Math.abs))).toBeLessThan(3 * 2.75);
  });

  it('run along the grain where fibers carry, and in no direction where haze settles', () => {
    const change = (mask: (x: number, y: number) => number, dx: number, dy: number) =>
      mean(places.map(([x, y]) => Math.abs(mask(x + dx, y + dy) - mask(x, y))));
    const carries = (x: number, y: number) => carried(x, y, 1, 3);
    expect(change(carries, 0, 0.2)).toBeGreaterThan(2 * change(carries, 0.2, 0));
    const settles = (x: number, y: number) => settled(x, y, 3);
    const ways = [change(settles, 0, 0.2), change(settles, 0.2, 0), change(settles, 0.14, 0.14)];
    expect(Math.max(...ways)).toBeLessThan(1.2 * Math.min(...ways));
  });
});
