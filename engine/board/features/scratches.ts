import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, roughen, scatter } from '../field.ts';
import { between, ease, type Random, random } from '../noise.ts';
import { cover, disc, type Point, radians, stroke, wander } from '../stamp.ts';

type Scratches = FeatureOf<'scratches'>;

/** Cuts a groove: deep about a third of its width, pale on its torn walls, `burr` thrown up beside it. */
type Cut = (points: readonly Point[], width: number, weight: number, length: number, burr: number) => void;

const cutter =
  (b: Board, f: Scratches): Cut =>
  (points, width, weight, length, burr) =>
    stroke(b, points, width * 1.2 + b.pitch, (i, d, run) => {
      const ends = Math.max(0.04, Math.min(1, (5 * Math.min(run, length - run)) / length));
      const share = Math.max(0, cover(b, width / 2 - d, width)) * weight * ends;
      const lip = burr * weight * ends * Math.exp(-(((d - width * 0.8) / (width * 0.3)) ** 2));
      raise(b, i, width * 1000 * (0.2 * lip - 0.36 * share));
      scatter(b, i, 0.75 * f.strength * share);
      roughen(b, i, 0.22, 0.7 * share);
    });

/** Strokes of a block: sets of lines of one direction, each set a little turned, of all depths. */
const lines = (b: Board, f: Scratches, next: Random, count: number, width: number, cut: Cut) => {
  const [low, high] = f['length-mm'];
  for (let n = 0; n < count; ) {
    const at: Point = [between(next, -0.15, 0.95) * b.widthMm, between(next, -0.05, 1.05) * b.heightMm];
    const heading = radians(f.angle) + between(next, -0.16, 0.16);
    const set = Math.ceil(between(next, 2, 14, 1.6));
    const reach = between(next, low, high * 1.5, 1.3);
    const bent = between(next, -0.006, 0.006);
    for (let k = 0; k < set && n < count; k++, n++) {
      const away = between(next, -1, 1) * (1 + set * 0.3);
      const start: Point = [
        at[0] - Math.sin(heading) * away + between(next, -3, 3),
        at[1] + Math.cos(heading) * away,
      ];
      const length = reach * between(next, 0.5, 1.1);
      const points: Point[] = [];
      for (let run = 0; run <= length; run += 1.5) {
        const angle = heading + bent * run;
        points.push([start[0] + Math.cos(angle) * run, start[1] + Math.sin(angle) * run]);
      }
      cut(points, width * between(next, 0.5, 1.3), between(next, 0.06, 1, 2.2), length, 0);
    }
  }
};

/** Curls of a machine: loops that travel on. */
const swirls = (b: Board, f: Scratches, next: Random, count: number, width: number, cut: Cut) => {
  const [low, high] = f['length-mm'];
  for (let n = 0; n < count; n++) {
    const at: Point = [between(next, -0.1, 1) * b.widthMm, between(next, -0.05, 1.05) * b.heightMm];
    const radius = between(next, low, Math.max(low, Math.min(high, 10))) / 2;
    const turn = next() * 6.28;
    const sweep = between(next, 2.4, 6.8);
    const points: Point[] = [];
    for (let t = 0; t <= 1.0001; t += 0.04) {
      const angle = turn + t * sweep;
      const r = radius * (1 - 0.25 * t);
      points.push([at[0] + Math.cos(angle) * r + t * radius * 0.7, at[1] + Math.sin(angle) * r]);
    }
    cut(points, width * between(next, 0.6, 1.2), between(next, 0.3, 1.1), radius * sweep * 0.88, 0);
  }
};

/** Marks of use in a soft film: nails that left two tracks, plowed lines with a burr, fine hair lines, and dents. */
const use = (b: Board, f: Scratches, next: Random, count: number, width: number, cut: Cut) => {
  const [low, high] = f['length-mm'];
  for (let n = 0; n < count; n++) {
    const at: Point = [between(next, 0, 1) * b.widthMm, between(next, 0, 1) * b.heightMm];
    const heading = next() * Math.PI;
    const length = between(next, low * 0.5, high, 2.4);
    const fine = n % 3 !== 0;
    const line = wander(next, at, heading, length, 0.3, 0.8);
    const wide = width * (fine ? between(next, 0.15, 0.5) : between(next, 0.7, 1.2));
    cut(line, wide, between(next, fine ? 0.15 : 0.5, 1), length, fine ? 0 : 1);
    if (fine || next() < 0.4) continue;
    const aside = between(next, 0.7, 1.8);
    const second = line
      .slice(2, -1)
      .map(([x, y]): Point => [x - Math.sin(heading) * aside, y + Math.cos(heading) * aside]);
    cut(second, wide * 0.7, 0.6, length * 0.8, 0.6);
  }
  for (let n = 0; n < Math.ceil(count / 7); n++) {
    // A nail pressed in straight leaves a shallow crescent.
    const radius = between(next, 2.5, 5);
    const turn = next() * 6.28;
    disc(b, [next() * b.widthMm, next() * b.heightMm], radius * 1.3, (i, d, dx, dy) => {
      const angle = Math.atan2(dy, dx) - turn;
      const bow = ease(0.55, 0.95, Math.cos(angle));
      raise(b, i, -45 * bow * Math.exp(-(((d - radius) / 0.35) ** 2)));
    });
  }
};

/** Grooves: of the paper, of a machine, of use. */
export const scratches = (b: Board, f: Scratches, from: number): void => {
  const count = Math.max(2, Math.round((f['per-cm2'] * b.widthMm * b.heightMm) / 100));
  const width = Math.max(0.5 * b.pitch, f['width-um'] / 1000);
  const draw = { lines, swirls, use } as const;
  draw[f.pattern](b, f, random(from), count, width, cutter(b, f));
};
