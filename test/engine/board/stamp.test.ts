/** Where bodies and strokes fall on a board: beside every pixel looked at one by one, laws of plane geometry. */
import { describe, expect, it } from 'vitest';
import { blankBoard } from '#engine/board/field.ts';
import { between, random } from '#engine/board/noise.ts';
import { inPore, places } from '#engine/board/places.ts';
import { cover, disc, type Point, placed, stroke, trickle, wander } from '#engine/board/stamp.ts';

const board = () => blankBoard(60, 80, 60);
const centers = Array.from(
  { length: 80 * 60 },
  (_, i): Point => [((i % 80) + 0.5) * 0.75, (Math.floor(i / 80) + 0.5) * 0.75],
);

describe('a disc', () => {
  it.each([
    [30, 22, 8],
    [2, 44, 5],
    [59, 1, 3],
    [30.1, 20.2, 0.1],
  ])(
    'at %d, %d of %d mm is all pixels so near and no other, with their way from the middle',
    (x, y, radius) => {
      const met = new Map<number, number>();
      disc(board(), [x, y], radius, (i, distance, dx, dy) => {
        expect(met.has(i)).toBe(false);
        expect(dx).toBeCloseTo((centers[i]?.[0] ?? 0) - x, 9);
        expect(dy).toBeCloseTo((centers[i]?.[1] ?? 0) - y, 9);
        met.set(i, distance);
      });
      // A body finer than a pixel is not lost: 0.72 of a pixel is the least reach.
      const reach = Math.max(radius, 0.75 * 0.72);
      const wanted = centers.flatMap(([cx, cy], i) => (Math.hypot(cx - x, cy - y) <= reach ? [i] : []));
      expect([...met.keys()].sort((a, b) => a - b)).toEqual(wanted);
      for (const [i, distance] of met)
        expect(distance).toBeCloseTo(Math.hypot((centers[i]?.[0] ?? 0) - x, (centers[i]?.[1] ?? 0) - y), 9);
      expect(met.size).toBeGreaterThan(0);
    },
  );

  it('covers a pixel wholly deep inside, by half on its edge, not outside; a thin one by its share', () => {
    expect([1, 0, -1].map((inside) => cover(board(), inside, 5))).toEqual([1, 0.5, 0]);
    expect(cover(board(), 0.75 / 4, 5)).toBeCloseTo(0.75, 12);
    expect(cover(board(), 1, 0.25)).toBeCloseTo(1 / 3, 12);
  });
});

describe('a stroke', () => {
  const line: readonly Point[] = [
    [5, 5],
    [30, 12],
    [30, 12],
    [41, 38],
    [58, 20],
  ];
  /** The way from a place to the nearest of the line's parts, and how far along the line that is. */
  const nearest = ([x, y]: Point) => {
    let [best, along, run] = [Number.POSITIVE_INFINITY, 0, 0];
    for (let p = 1; p < line.length; p++) {
      const [[x0, y0], [x1, y1]] = [line[p - 1] as Point, line[p] as Point];
      const length = Math.hypot(x1 - x0, y1 - y0);
      if (length === 0) continue;
      const t = Math.min(1, Math.max(0, ((x - x0) * (x1 - x0) + (y - y0) * (y1 - y0)) / length ** 2));
      const far = Math.hypot(x - x0 - t * (x1 - x0), y - y0 - t * (y1 - y0));
      if (far < best - 1e-9) [best, along] = [far, run + t * length];
      run += length;
    }
    return { best, along };
  };

  it.each([4, 0.9, 0.1])('reaches each pixel within %d mm once, by its nearest part', (reach) => {
    const on = board();
    for (let again = 0; again < 2; again++) {
      const met = new Map<number, readonly [number, number]>();
      stroke(on, line, reach, (i, distance, along) => {
        expect(met.has(i)).toBe(false);
        met.set(i, [distance, along]);
      });
      const wide = Math.max(reach, 0.75 * 0.72);
      for (const [i, center] of centers.entries()) {
        const { best, along } = nearest(center);
        if (Math.abs(best - wide) < 1e-6) continue;
        expect(met.has(i), `${center}`).toBe(best < wide);
        if (best >= wide) continue;
        expect(met.get(i)?.[0]).toBeCloseTo(best, 4);
        expect(met.get(i)?.[1]).toBeCloseTo(along, 3);
      }
    }
  });
});

describe('lines', () => {
  it('that wander go so far in steps, straight where they do not curl', () => {
    const straight = wander(random(1), [10, 10], Math.PI / 6, 20, 0, 0.5);
    expect(straight).toHaveLength(41);
    expect(straight.at(-1)?.[0]).toBeCloseTo(10 + 20 * Math.cos(Math.PI / 6), 9);
    expect(straight.at(-1)?.[1]).toBeCloseTo(10 + 20 * Math.sin(Math.PI / 6), 9);
    const bent = (curl: number) =>
      Array.from({ length: 200 }, (_, seed) => {
        const points = wander(random(seed), [0, 0], 0, 20, curl, 0.5);
        for (let at = 1; at < points.length; at++)
          expect(
            Math.hypot(
              (points[at]?.[0] ?? 0) - (points[at - 1]?.[0] ?? 0),
              (points[at]?.[1] ?? 0) - (points[at - 1]?.[1] ?? 0),
            ),
          ).toBeCloseTo(0.5, 9);
        return points.at(-1) ?? [0, 0];
      });
    const aside = (curl: number) => bent(curl).reduce((sum, [, y]) => sum + Math.abs(y), 0);
    expect(aside(1)).toBeGreaterThan(1.5 * aside(0.5));
    // To either side alike: half up to a third.
    const left = bent(0.6).filter(([, y]) => y > 0).length / 200;
    expect(Math.abs(left - 0.5)).toBeLessThan(0.12);
  });

  it('that trickle run down, and sway to either side no more than told', () => {
    for (let seed = 0; seed < 50; seed++) {
      const points = trickle(random(seed), [20, 5], 24.4, 2);
      expect(points).toHaveLength(31);
      for (const [at, [x, y]] of points.entries()) {
        expect(y).toBeCloseTo(5 + at * 0.8, 9);
        expect(Math.abs(x - 20)).toBeLessThanOrEqual(1.6 * 2);
      }
      expect(points[0]?.[0]).toBe(20);
    }
    const ends = Array.from(
      { length: 200 },
      (_, seed) => trickle(random(seed), [20, 5], 24.4, 2).at(-1)?.[0] ?? 0,
    );
    expect(Math.abs(ends.reduce((sum, x) => sum + x - 20, 0) / 200)).toBeLessThan(0.5);
  });
});

describe('places', () => {
  it('of a body are where it is told, or in the middle of the board', () => {
    expect(placed(board(), random(1), [3, 4])).toEqual([3, 4]);
    for (let seed = 0; seed < 200; seed++) {
      const [x, y] = placed(board(), random(seed), undefined);
      expect(Math.abs(x / 60 - 0.5)).toBeLessThanOrEqual(0.14);
      expect(Math.abs(y / 45 - 0.5)).toBeLessThanOrEqual(0.1);
    }
  });

  const share = (points: readonly Point[], is: (point: Point) => boolean) =>
    points.filter(is).length / points.length;

  it('of many are as many as told to a square centimeter, spread over the board', () => {
    // 6 × 4.5 cm: 27 cm².
    const points = places(board(), random(2), 20);
    expect(points).toHaveLength(540);
    for (const quarter of [0, 1, 2, 3])
      expect(
        share(points, ([x, y]) => Math.floor(x / 30) + 2 * Math.floor(y / 22.5) === quarter),
      ).toBeCloseTo(0.25, 1);
    expect(places(board(), random(2), 0)).toHaveLength(1);
    expect(places(board(), random(2), 400)).toHaveLength(3000);
  });

  it('along the edge lie near the upper one, thinner away from it', () => {
    const points = places(board(), random(3), 20, 'edge');
    expect(points).toHaveLength(540);
    // The cube of an even number: half of them lie within an eighth of the height.
    expect(share(points, ([, y]) => y < 45 / 8)).toBeCloseTo(0.5, 1);
    expect(share(points, ([x]) => x < 30)).toBeCloseTo(0.5, 1);
    expect(points.every(([, y]) => y >= 0 && y <= 45)).toBe(true);
  });

  it('along strokes lie in tracks a tool apart, more where the stroke begins', () => {
    const points = places(board(), random(4), 20, 'strokes');
    const tracks = [7.5, 22.5, 37.5];
    for (const track of tracks)
      expect(share(points, ([, y]) => Math.abs(y - track) < 7.5)).toBeCloseTo(1 / 3, 1);
    expect(share(points, ([, y]) => tracks.some((track) => Math.abs(y - track) <= 2.6))).toBe(1);
    expect(share(points, ([x]) => x < 30)).toBeGreaterThan(0.6);
  });

  it('in pores lie on furrows of the wood, of which each is met in a row', () => {
    const on = board();
    // A furrow each 3 mm: every fourth row.
    for (let i = 0; i < on.height.length; i++) if (Math.floor(i / 80) % 4 === 2) on.height[i] = -9;
    const points = places(on, random(5), 20, 'pores');
    expect(points).toHaveLength(540);
    const inside = points.filter(([x, y]) => x >= 0 && x < 60 && y >= 0 && y < 45);
    const deep = inside.filter(
      ([x, y]) => (on.height[Math.floor(y / 0.75) * 80 + Math.floor(x / 0.75)] ?? 0) < -4,
    );
    expect(deep.length / inside.length).toBeGreaterThan(0.7);
    // The furrow beside it is found, above or below, and a face without any leaves the place as it is.
    expect(inPore(on, [10, 2.5 * 0.75 + 0.7])).toEqual([10, 2.5 * 0.75]);
    expect(inPore(on, [10, 2.5 * 0.75 - 0.7])).toEqual([10, 2.5 * 0.75]);
    expect(inPore(board(), [10, 11])).toEqual([10, 11]);
    const next = random(6);
    for (let n = 0; n < 100; n++) {
      const at: Point = [between(next, 0, 60), between(next, 0, 45)];
      expect(Math.abs(inPore(on, at)[1] - at[1])).toBeLessThanOrEqual(0.8 + 0.75 * 1.5);
    }
  });
});
