import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, roughen, scatter } from '../field.ts';
import { between, noise, type Random, random } from '../noise.ts';
import { cover, disc, type Point, radians, stroke, wander } from '../stamp.ts';

type Scratches = FeatureOf<'scratches'>;

/** Cuts a groove: deep about a third of its width, pale on its torn walls, `burr` thrown up beside it. */
type Cut = (points: readonly Point[], width: number, weight: number, length: number, burr: number) => void;

const cutter =
  (b: Board, f: Scratches, next: Random): Cut =>
  (points, width, weight, length, burr) => {
    const id = Math.floor(next() * 1e6);
    stroke(b, points, width * 1.3 + b.pitch, (i, d, run) => {
      const ends = Math.max(0.04, Math.min(1, (4 * Math.min(run, length - run)) / length));
      // What cut it skipped and turned: wider here, only a hairline there.
      const bite = Math.max(0.12, 0.7 + 0.75 * noise(run / 3.4, 1, id) + 0.35 * noise(run / 0.8, 4, id));
      const wide = (width / 2) * Math.min(1.25, 0.55 + 0.5 * bite);
      const share = Math.max(0, cover(b, wide - d, width)) * weight * ends * Math.min(1, bite);
      const thrown =
        burr * Math.max(0, noise(run / 1.6, 8, id) + 0.25) * Math.max(0, noise(run / 5, 6, id) + 0.5);
      const lip = thrown * weight * ends * Math.exp(-(((d - width * 0.75) / (width * 0.34)) ** 2));
      raise(b, i, width * 1000 * (0.3 * lip - 0.3 * share));
      const torn = burr > 0 ? 0.35 + 0.6 * Math.max(0, noise(run / 0.35, d / 0.08, id + 1)) : 1;
      scatter(b, i, 0.75 * f.strength * share * torn);
      roughen(b, i, 0.22, 0.7 * share);
    });
  };

/** Strokes of a block: sets of lines of one direction, each set a little turned, of all depths. */
const lines = (b: Board, f: Scratches, next: Random, count: number, width: number, cut: Cut) => {
  const [low, high] = f['length-mm'];
  for (let n = 0; n < count; ) {
    const at: Point = [between(next, -0.15, 0.95) * b.widthMm, between(next, -0.05, 1.05) * b.heightMm];
    // Most go one way, some sets cross them as the hand came from another side.
    const heading =
      radians(f.angle) + between(next, -0.16, 0.16) + (next() < 0.3 ? between(next, -0.7, 0.7) : 0);
    const set = Math.ceil(between(next, 3, 26, 1.8));
    const reach = between(next, low, high * 1.5, 1.3);
    const bent = between(next, -0.008, 0.008);
    for (let k = 0; k < set && n < count; k++, n++) {
      const away = between(next, -1, 1) * (0.4 + set * 0.16);
      const start: Point = [
        at[0] - Math.sin(heading) * away + between(next, -3, 3),
        at[1] + Math.cos(heading) * away,
      ];
      const length = reach * between(next, 0.2, 1.1);
      const askew = between(next, -1, 1) ** 3 * 0.12;
      const points: Point[] = [];
      for (let run = 0; run <= length; run += 1.5) {
        const angle = heading + askew + bent * run;
        points.push([start[0] + Math.cos(angle) * run, start[1] + Math.sin(angle) * run]);
      }
      cut(points, width * between(next, 0.4, 1.3), between(next, 0.05, 1, 2), length, 0);
    }
  }
};

/**
 * Curls of a machine: small loops that overlap in trains along its way; only where a grain stood out or it was leaned
 * on do they cut.
 */
const swirls = (b: Board, f: Scratches, next: Random, count: number, width: number, cut: Cut) => {
  const [low, high] = f['length-mm'];
  for (let n = 0; n < count; ) {
    let [x, y] = [between(next, -0.1, 0.9) * b.widthMm, between(next, -0.05, 1.05) * b.heightMm];
    let way = radians(f.angle) + between(next, -0.5, 0.5);
    const radius = between(next, low, Math.max(low, Math.min(high, 10)), 1.6) / 2;
    const hand = next() < 0.85 ? 1 : -1;
    let turn = next() * 6.28;
    for (let loop = Math.ceil(between(next, 2, 9)); loop > 0 && n < count; loop--, n++) {
      // Part of one loop of the train, flattened and opening; a clump of grains cuts two or three arcs side by side.
      const r = radius * between(next, 0.7, 1.05);
      const flat = between(next, 0.45, 0.95);
      const lean = between(next, -0.6, 0.6) + way;
      const opens = between(next, -0.35, 0.5);
      const from = between(next, -0.25, 0.35);
      const span = between(next, 0.1, 1.15, 1.3);
      for (let grain = Math.ceil(between(next, 0, 4, 1.5)); grain > 0; grain--) {
        const away = between(next, -0.14, 0.14) * radius;
        const begins = from + between(next, -0.06, 0.06);
        const part = span * between(next, 0.5, 1.1);
        const bent = between(next, -0.12, 0.12);
        const points: Point[] = [];
        for (let t = 0; t <= 1.0001; t += 0.04) {
          const angle = turn + hand * 6.283 * (begins + part * t);
          const wide = (r + away) * (1 + opens * t * part + bent * Math.sin(5 * t));
          const [u, v] = [Math.cos(angle) * wide, Math.sin(angle) * wide * flat];
          const on = radius * 1.1 * (begins + part * t);
          points.push([
            x + u * Math.cos(lean) - v * Math.sin(lean) + Math.cos(way) * on,
            y + u * Math.sin(lean) + v * Math.cos(lean) + Math.sin(way) * on,
          ]);
        }
        const length = 6.283 * r * part;
        cut(points, width * between(next, 0.3, 1.2, 1.6), between(next, 0.04, 0.75, 2), length, 0);
      }
      x += Math.cos(way) * radius * between(next, 0.7, 1.3);
      y += Math.sin(way) * radius * between(next, 0.7, 1.3);
      way += between(next, -0.22, 0.22);
      turn += between(next, -0.5, 0.5);
    }
  }
};

/**
 * Something pressed in: a broad shallow place, or the corner of a thing that slid on a little and pushed film up before
 * it.
 */
const dent = (b: Board, next: Random, at: Point, broad: boolean): void => {
  const turn = next() * 6.28;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const half = broad ? between(next, 0.9, 2.2) : between(next, 0.18, 0.5);
  const long = broad ? half * between(next, 1, 1.6) : half * between(next, 1.5, 4.5);
  const deep = broad ? between(next, 12, 26) : between(next, 16, 34);
  const bow = between(next, -0.5, 0.5) / long;
  const id = Math.floor(next() * 1e6);
  disc(b, at, long * 2.2, (i, _d, dx, dy) => {
    const u = dx * c + dy * s;
    const v = dy * c - dx * s + bow * u * u * 0.5 + 0.2 * half * noise(u / half, 3, id);
    // It went in steeply and slid out flat.
    const along = u / (u > 0 ? long * 0.45 : long);
    const pressed = Math.exp(-((along * along + (v / half) ** 2) ** 1.3));
    const pushed =
      Math.exp(-(((u - long * 0.62) / (half * 0.5)) ** 2) - (v / (half * 1.1)) ** 2) *
      Math.max(0, 0.6 + noise(v / (half * 0.6), u / half, id + 1));
    raise(b, i, -deep * pressed + (broad ? 0.12 : 0.45) * deep * pushed);
  });
};

/** Marks of use in a soft film: nails that left two tracks, plowed lines with a burr, fine hair lines, and dents. */
const use = (b: Board, f: Scratches, next: Random, count: number, width: number, cut: Cut) => {
  const [low, high] = f['length-mm'];
  for (let n = 0; n < count; n++) {
    const at: Point = [between(next, 0, 1) * b.widthMm, between(next, 0, 1) * b.heightMm];
    const heading = next() * Math.PI;
    const length = between(next, low * 0.5, high, 2.4);
    const fine = n % 3 !== 0;
    // What touched it was turned on the way: a bent line, a hook at its end, or a zigzag where it was dragged back.
    const line = wander(next, at, heading, length, fine ? 0.5 : 0.7, 0.4);
    if (!fine && next() < 0.5) {
      const back = heading + Math.PI + between(next, -0.9, 0.9);
      line.push(...wander(next, line[line.length - 1]!, back, length * between(next, 0.1, 0.35), 2, 0.4));
    }
    const wide = width * (fine ? between(next, 0.15, 0.5) : between(next, 0.7, 1.5));
    cut(line, wide, between(next, fine ? 0.15 : 0.5, 1), length, fine ? 0 : 1);
    if (fine || next() < 0.65) continue;
    const aside = between(next, 0.7, 1.8);
    const second = line
      .slice(2, -1)
      .map(([x, y]): Point => [x - Math.sin(heading) * aside, y + Math.cos(heading) * aside]);
    cut(second, wide * 0.7, 0.6, length * 0.8, 0.6);
  }
  for (let n = 0; n < Math.ceil(count / 4); n++)
    dent(b, next, [next() * b.widthMm, next() * b.heightMm], n % 3 === 0);
};

/** Grooves: of the paper, of a machine, of use. */
export const scratches = (b: Board, f: Scratches, from: number): void => {
  const count = Math.max(2, Math.round((f['per-cm2'] * b.widthMm * b.heightMm) / 100));
  const width = Math.max(0.5 * b.pitch, f['width-um'] / 1000);
  const draw = { lines, swirls, use } as const;
  draw[f.pattern](b, f, random(from), count, width, cutter(b, f, random(from + 1)));
};
