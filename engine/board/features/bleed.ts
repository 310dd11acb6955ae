import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, stain } from '../field.ts';
import { blot, patches } from '../mask.ts';
import { between, ease, noise, type Random, random, rough } from '../noise.ts';
import { cover, type Point, placed, stroke, trickle } from '../stamp.ts';

const TANNIN = [0.3, 0.74, 1.5] as const;
const RESIN = [0.3, 0.8, 1.6] as const;
const DYE = [0.12, 1.35, 0.95] as const;
const INK = [1.7, 1.5, 0.55] as const;
const SMOKE = [0.28, 0.6, 1.3] as const;

type Bleed = FeatureOf<'bleed'>;

const knot = (b: Board, f: Bleed, from: number, center: Point): void => {
  const radius = f['size-mm'] / 2;
  const edge = blot(center, radius, from, 0.07, 1.25);
  everywhere(b, (i, x, y) => {
    const d = edge(x, y);
    if (d > radius * 0.8) return;
    const depth = Math.max(0, 1 - ease(-radius * 0.25, radius * 0.6, d));
    const ring = 0.5 + 0.5 * Math.sin((d * 6.283) / (radius * 0.21) + 1.6 * noise(x / 4, y / 4, from));
    const rim = Math.exp(-(((d + radius * 0.06) / (radius * 0.11)) ** 2));
    const heart = 1 - ease(-radius, -radius * 0.55, d);
    stain(b, i, RESIN, f.strength * (depth * (0.28 + 0.42 * ring) + 0.8 * rim + 0.7 * heart));
  });
};

const tannin = (b: Board, f: Bleed, from: number): void => {
  const cloud = patches(f['size-mm'] * 1.25, from, 0.46, 0.7);
  everywhere(b, (i, x, y) => {
    // It rises along the grain: in the bands of the rings, and most over the open pores.
    const ring = (y + 5 * noise(x / 80, y / 30, from + 6)) / 5.2;
    const part = ring - Math.floor(ring);
    const band = 0.35 + 0.65 * part * part * (1 - ease(0.86, 1, part));
    const fiber = noise(x / 16, y / 0.5, from + 7);
    const share = cloud(x * 0.55, y + 1.5 * fiber);
    if (share === 0) return;
    const tide = Math.exp(-(((share - 0.2) / 0.14) ** 2));
    const uneven = 0.9 + 0.3 * fiber + 0.25 * rough(x / 7, y / 4, from + 4, 2);
    stain(b, i, TANNIN, f.strength * uneven * (1.35 * band * share + 0.12 * tide));
  });
};

const dye = (b: Board, f: Bleed, from: number, center: Point): void => {
  const next = random(from + 1);
  const radius = f['size-mm'] / 2;
  const blots = Array.from({ length: 6 }, (_, n) => {
    const at: Point = n === 0 ? center : [next() * b.widthMm, next() * b.heightMm];
    const size = radius * (n === 0 ? 1 : between(next, 0.12, 0.55, 1.6));
    const stretch = between(next, 1.1, 1.8);
    return { at, reach: size * stretch * 1.7 + radius, edge: blot(at, size, from + n, 0.7, stretch) };
  });
  everywhere(b, (i, x, y) => {
    let d = 1e9;
    for (const { at, reach, edge } of blots)
      if (Math.abs(x - at[0]) < reach && Math.abs(y - at[1]) < reach) d = Math.min(d, edge(x, y));
    if (d > radius * 1.4) return;
    // It creeps on in fine fingers, as ink does in paper.
    d += 1.6 * rough(x / 5, y / 5, from + 9, 3);
    // Thickest where the dye climbed, a wide pale halo round it.
    const core = 1 - ease(-radius * 0.65, radius * 0.1, d);
    const halo = Math.exp(-((Math.max(0, d + radius * 0.3) / (radius * 0.55)) ** 2));
    const share = 0.62 * core + 0.42 * halo;
    if (share > 0.01) stain(b, i, DYE, f.strength * share * (0.9 + 0.3 * rough(x / 9, y / 7, from + 12, 3)));
  });
};

const ink = (b: Board, f: Bleed, [x, y]: Point): void => {
  const size = f['size-mm'] / 2;
  const line: Point[] = [];
  for (let t = 0; t <= 1; t += 0.004) {
    const turn = t * 2 * Math.PI * 5;
    const swell = 0.55 + 0.45 * Math.sin(t * 9);
    line.push([
      x - size * 1.5 + t * size * 3 - Math.sin(turn) * size * 0.3,
      y - Math.cos(turn) * size * 0.55 * swell,
    ]);
  }
  const half = 0.35;
  const draw = (points: readonly Point[]) =>
    stroke(b, points, half * 3.5, (i, d) => {
      const feather = 0.22 * Math.exp(-((d / (half * 1.9)) ** 2));
      stain(b, i, INK, 1.5 * f.strength * (cover(b, half - d, half * 2) + feather));
    });
  draw(line);
  draw([
    [x - size * 1.5, y + size * 1.1],
    [x + size * 1.3, y + size * 0.95],
  ]);
};

const smoke = (b: Board, f: Bleed, next: Random): void => {
  for (let n = 0; n < 6; n++) {
    const x = between(next, 0.05, 0.95) * b.widthMm;
    const length = between(next, 0.35, 1) * b.heightMm;
    const half = between(next, 0.5, 1.6);
    const line = trickle(next, [x, between(next, -0.1, 0.25) * b.heightMm], length, 0.4);
    stroke(b, line, half * 2, (i, d, run) => {
      const end = Math.exp(-(((length - run) / (half * 2)) ** 2));
      const share = Math.exp(-((d / half) ** 2)) * ease(0, length * 0.3, run);
      stain(b, i, SMOKE, f.strength * share * (0.75 + 0.9 * end));
    });
  }
};

/** Color from below, held in the paint or the film. */
export const bleed = (b: Board, f: Bleed, from: number): void => {
  const next = random(from);
  const center = placed(b, next, f.at);
  if (f.from === 'knot') knot(b, f, from, center);
  else if (f.from === 'tannin') tannin(b, f, from);
  else if (f.from === 'dye') dye(b, f, from, center);
  else if (f.from === 'ink') ink(b, f, center);
  else smoke(b, f, next);
};
