import type { FeatureOf } from '../../model/board.ts';
import { groundBelow } from '../base.ts';
import { type Board, dim, inBands, raise, roughen, scatter, tint, uncover } from '../field.ts';
import { remnant } from '../mask.ts';
import { between, drawnOut, ease, noise, type Random, random, rough } from '../noise.ts';
import { cover, type Point, placed, stroke, wander } from '../stamp.ts';
import type { Steps } from '../steps.ts';

/** Old primer is gray and stained by what lay on it, linear light. */
const PRIMER = [0.1, 0.098, 0.088] as const;

/**
 * Distance outside (+) or inside (−) a place broken out along cracks, mm: sides of unequal length, each torn in nicks
 * and bays.
 */
const broken = (next: Random, [cx, cy]: Point, radius: number, corners: number, seed: number) => {
  const turn = next() * 6.28;
  const points = Array.from({ length: corners }, (_, n): Point => {
    const angle = turn + ((n + between(next, -0.42, 0.42)) * 6.2832) / corners;
    const reach = radius * between(next, 0.62, 1.22);
    return [cx + Math.cos(angle) * reach * 1.25, cy + Math.sin(angle) * reach];
  });
  const edge = (x: number, y: number, nicks: number): number => {
    const px =
      x +
      1.1 * noise(x / 6, y / 6, seed + 1) +
      (0.2 + 0.3 * nicks) * noise(x / 2, y / 2, seed) +
      nicks * 0.2 * noise(x / 0.6, y / 0.6, seed + 3);
    const py =
      y +
      1.1 * noise(x / 6, y / 6, seed + 2) +
      (0.2 + 0.3 * nicks) * noise(x / 2, y / 2, seed + 4) +
      nicks * 0.2 * noise(x / 0.6, y / 0.6, seed + 5);
    let nearest = 1e9;
    let inside = false;
    for (let n = 0, m = corners - 1; n < corners; m = n++) {
      const [ax, ay] = points[m]!;
      const [bx, by] = points[n]!;
      const [ex, ey] = [bx - ax, by - ay];
      const t = Math.min(1, Math.max(0, ((px - ax) * ex + (py - ay) * ey) / (ex * ex + ey * ey)));
      nearest = Math.min(nearest, (px - ax - t * ex) ** 2 + (py - ay - t * ey) ** 2);
      if (ay > py !== by > py && px < ax + ((py - ay) / (by - ay)) * ex) inside = !inside;
    }
    return Math.sqrt(nearest) * (inside ? -1 : 1);
  };
  return { points, edge };
};

/** Hairline cracks that run on from the corners into the film that still holds. */
const cracksFrom = (b: Board, next: Random, center: Point, corners: readonly Point[]): void => {
  for (const [x, y] of corners) {
    if (next() < 0.6) continue;
    const heading = Math.atan2(y - center[1], x - center[0]) + between(next, -0.6, 0.6);
    const length = between(next, 1, 6, 1.8);
    stroke(b, wander(next, [x, y], heading, length, 1.2, 0.3), 0.3, (i, d, run) => {
      const half = 0.045 * (1 - run / (length * 1.1));
      const share = Math.max(0, cover(b, half - d, 0.09));
      raise(b, i, -14 * share + 5 * Math.exp(-d / 0.12) * (1 - run / length));
      scatter(b, i, 0.16 * share);
    });
  }
};

/**
 * Film that let go: broken out along cracks; where it still hangs on it is pale with air below and curls up in flaps,
 * elsewhere it broke clean.
 */
export function* peel(b: Board, f: FeatureOf<'peel'>, from: number): Steps {
  const next = random(from);
  const center = placed(b, next, f.at);
  const radius = f['size-mm'] / 2;
  const { points, edge: main } = broken(next, center, radius * 0.9, 13, from);
  // Chips of it flew beside.
  const chips = [0, 1, 2].map((n) => {
    const [way, away] = [next() * 6.28, radius * between(next, 1.05, 1.5)];
    const at: Point = [center[0] + Math.cos(way) * away * 1.25, center[1] + Math.sin(way) * away];
    return broken(next, at, radius * between(next, 0.08, 0.26, 1.5), 6, from + 40 + n).edge;
  });
  const edge = (x: number, y: number, nicks: number): number =>
    chips.reduce((least, chip) => Math.min(least, chip(x, y, nicks)), main(x, y, nicks));
  const hinge = next() * 6.28;
  const [hx, hy] = [Math.cos(hinge), Math.sin(hinge)];
  const ground =
    f.under === 'base'
      ? undefined
      : groundBelow(b, f.under === 'wood' ? { wood: 'oak' } : { paint: 'white' }, from);
  yield;
  const lift = f['lift-um'];
  cracksFrom(b, next, center, points);
  yield* inBands(b, (i, x, y) => {
    if (Math.abs(x - center[0]) > radius * 2.6 || Math.abs(y - center[1]) > radius * 2.4) return;
    const d = edge(x, y, 1);
    if (d > radius) return;
    const film = b.film[i]!;
    const toward = ((x - center[0]) * hx + (y - center[1]) * hy) / radius;
    const aside = ((y - center[1]) * hx - (x - center[0]) * hy) / radius;
    const jag = 0.16 * noise(aside * 3.1, 2, from + 8) + 0.05 * noise(aside * 11, 7, from + 10);
    const past = (toward - 0.34 - jag - 0.9 * aside * aside) * radius;
    if (d < 0) {
      const strokes =
        0.8 * drawnOut(x - 0.4 * y, y + 0.4 * x, 5, 0.5, from + 3) +
        0.7 * rough(x / 0.6, y / 0.6, from + 17, 2);
      const paint: readonly [number, number, number] = [b.red[i]!, b.green[i]!, b.blue[i]!];
      // A tongue of it still hangs on: fast along the rim, high where it broke off.
      const flap = film > 0 ? ease(-0.1, 0.1, past) : 0;
      const bare = ease(0, -0.16, d) * (1 - flap);
      const deep = -Math.min(0, edge(x, y, 0));
      const torn =
        Math.exp(-(((flap > 0 ? past - 0.1 : d + 0.05) / 0.09) ** 2)) * (0.3 + remnant(x, y, 2.5, from + 9));
      if (ground) {
        uncover(b, i, ground, bare);
        if (f.under === 'white') {
          const worn =
            0.93 +
            0.06 * noise(x / 9, y / 7, from + 13) +
            0.05 * strokes +
            0.07 * rough(x / 1.2, y / 1.2, from + 14, 3) +
            0.06 * Math.exp(d / 0.7);
          tint(b, i, PRIMER, bare * Math.min(1, worn));
          // A thin stain of the paint stayed in the low places of the old face.
          tint(
            b,
            i,
            paint,
            0.3 *
              bare *
              ease(0.35, 0.85, noise(x / 6, y / 2.5, from + 15) + 0.4 * noise(x / 2, y / 1.6, from + 12)),
          );
        }
      }
      // Under the rim and the flap less light comes in.
      const hemmed = bare * (0.22 * Math.exp(d / 1.8) - 0.9 * Math.exp(d / 0.3));
      dim(b, i, [1 - hemmed, 1 - hemmed, 1 - hemmed]);
      b.film[i] = film * (1 - bare);
      b.haze[i] = b.haze[i]! * (1 - bare);
      scatter(b, i, 0.14 * torn);
      // Where it held best, crumbs and thin scales of it stayed on the floor.
      const crumb = ground
        ? ease(0.42, 0.56, 0.8 * rough(x / 0.8, y / 0.7, from + 18, 3) + 0.34 * Math.exp(d / 0.7)) * bare
        : 0;
      tint(b, i, paint, 0.85 * crumb);
      const floor = ground
        ? ground.height[i]! * 0.5 +
          5 * strokes +
          3 * rough(x / 0.8, y / 0.8, from + 19, 2) -
          film -
          30 +
          22 * crumb
        : 3 * strokes - film;
      raise(b, i, floor * (ground ? ease(0.06, -0.55, d) * (1 - flap) : bare));
      roughen(b, i, ground ? b.bareRoughness : 0.075, bare);
      if (flap > 0) {
        const curl = (deep / (radius * 0.7)) * (1 + 0.25 * noise(aside * 2.4, 5, from + 11));
        raise(b, i, flap * (lift * 0.9 * curl ** 1.6 + 5 * noise(x / 2.2, y / 2.2, from + 8)));
        scatter(b, i, flap * 0.05 * Math.min(1, curl));
      }
      return;
    }
    // Elsewhere a narrow lip of it let go and curls up; it is pale with air below.
    const holds = film > 0 ? ease(0.8, -0.4, past) : 1;
    const stands = holds * ease(-0.25, 0.45, noise(x / (radius * 0.45), y / (radius * 0.45), from + 4));
    const loose = 0.2 + radius * 0.17 * stands * (1 + 0.6 * noise(x / 3, y / 3, from + 5));
    const back = Math.max(0, 0.4 * edge(x, y, 0) + 0.6 * d);
    if (back > loose * 2.2) return;
    const rise = Math.max(0, 1 - back / loose);
    raise(b, i, 0.2 * lift * stands * rise ** 1.7);
    scatter(
      b,
      i,
      0.13 * holds * Math.exp(-d / 0.08) * (0.3 + 0.7 * stands) +
        0.05 * stands * ease(2.2, 0.6, back / loose),
    );
  });
}
