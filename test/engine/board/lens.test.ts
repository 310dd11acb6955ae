/** What a lens does to a picture: laws of optics and of chance, no source needed. */
import { describe, expect, it } from 'vitest';
import { throughLens } from '#engine/board/lens.ts';
import { STRAIGHT } from '#engine/board/light.ts';
import type { Pixels } from '#engine/board/pixels.ts';

const [WIDTH, HEIGHT] = [240, 180];
const picture = (value: (column: number, row: number) => number): Pixels => {
  const data = new Uint8ClampedArray(WIDTH * HEIGHT * 4);
  for (let row = 0; row < HEIGHT; row++)
    for (let column = 0; column < WIDTH; column++)
      data.fill(value(column, row), (row * WIDTH + column) * 4, (row * WIDTH + column) * 4 + 4);
  return { width: WIDTH, height: HEIGHT, data };
};
const at = ({ data }: Pixels, column: number, row: number) => data[(row * WIDTH + column) * 4] ?? Number.NaN;

describe('a lens', () => {
  it('keeps the light of an even picture, with a grain of a few bytes that is gray', () => {
    for (const level of [40, 128, 210]) {
      const seen = picture(() => level);
      throughLens(seen, STRAIGHT);
      let sum = 0;
      for (let o = 0; o < seen.data.length; o += 4) {
        const [red = 0, green = 0, blue = 0, alpha = 0] = seen.data.subarray(o, o + 4);
        expect([green, blue, alpha]).toEqual([red, red, level]);
        expect(Math.abs(red - level)).toBeLessThanOrEqual(3);
        sum += red;
      }
      expect(Math.abs(sum / (WIDTH * HEIGHT) - level)).toBeLessThan(0.2);
    }
  });

  it('is sharp in the middle and soft toward one side, the other way round where the board lies the other way', () => {
    const steps = (turn: number) => {
      // Narrow upright bars: how much of their height is left.
      const seen = picture((column) => (column % 4 < 2 ? 60 : 180));
      throughLens(seen, { ...STRAIGHT, turn });
      const left = (from: number) => {
        let sum = 0;
        for (let row = 20; row < HEIGHT - 20; row++)
          for (let column = from; column < from + 24; column++)
            sum += Math.abs(at(seen, column, row) - at(seen, column + 2, row));
        return sum / (24 * (HEIGHT - 40));
      };
      return [left(4), left(108), left(WIDTH - 32)] as const;
    };
    const [west, middle, east] = steps(0);
    expect(middle).toBeGreaterThan(110);
    expect(west).toBeGreaterThan(110);
    expect(east).toBeLessThan(middle * 0.7);
    const turned = steps(12);
    expect(turned[0]).toBeLessThan(turned[1] * 0.7);
    expect(turned[2]).toBeGreaterThan(110);
  });
});
