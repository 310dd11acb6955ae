/** The fit of the soak, by a row that was reckoned by hand and by rows with a slope that is known. */
import { describe, expect, it } from 'vitest';
import { dice } from '../dice.ts';
import { slopeOf } from './slope.ts';
import { grown } from './soak.ts';

const noisy = (slope: number, seed: number, count = 40) => {
  const roll = dice(seed);
  return Array.from({ length: count }, (_, at): [number, number] => [
    at * 100,
    5e6 + slope * at * 100 + (roll() + roll() + roll() - 1.5) * 2e5,
  ]);
};
const slopes = { slope: 0, least: 0, most: 0 };
const flat = { where: 'about', nodes: slopes, listeners: slopes, held: [] };
const stored = { first: 11e6, last: 11e6, notes: 900 };

describe('the slope of the memory', () => {
  it('is the one that was reckoned by hand', () => {
    // An invented row. Its ten slopes in order: 0, 0, 0.5, 1, 1, 1, 1.33, 1.5, 1.5, 3. Sen's ranks for five points:
    // 1.96 √(5·4·15 / 18) = 8.0, so from the first to the tenth.
    const row: [number, number][] = [
      [0, 0],
      [1, 1],
      [2, 1],
      [3, 4],
      [4, 4],
    ];
    expect(slopeOf(row)).toEqual({ slope: 1, least: 0, most: 3 });
  });

  it.each([0, 300, 5000])('holds %d bytes an act in its interval 90 times in 100', (slope) => {
    const held = Array.from({ length: 100 }, (_, seed) => slopeOf(noisy(slope, seed))).filter(
      ({ least, most }) => least <= slope && slope <= most,
    );
    expect(held.length).toBeGreaterThanOrEqual(90);
  });

  it('is hardly moved by one odd measurement', () => {
    const row = noisy(0, 3);
    const odd = row.map(([x, y], at): [number, number] => (at === 20 ? [x, y * 10] : [x, y]));
    expect(Math.abs(slopeOf(odd).slope - slopeOf(row).slope)).toBeLessThan(20);
  });

  it('tells nothing of four measurements', () => {
    expect(slopeOf(noisy(9000, 1, 4)).least).toBe(Number.NEGATIVE_INFINITY);
  });
});

describe('what has grown', () => {
  it('is told where the memory surely grows, and not where it may', () => {
    expect(grown({ growth: [{ ...flat, bytes: slopeOf(noisy(5000, 1)) }], stored })).toEqual([
      expect.stringMatching(/^memory grows on about by at least \d+ bytes an act/),
    ]);
    expect(grown({ growth: [{ ...flat, bytes: slopeOf(noisy(0, 1)) }], stored })).toEqual([]);
  });

  it('is told of the storage', () => {
    expect(grown({ growth: [], stored: { ...stored, last: 30e6 } })).toHaveLength(1);
    expect(grown({ growth: [], stored: { ...stored, notes: 80_000 } })).toHaveLength(1);
  });
});
