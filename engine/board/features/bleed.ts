import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, stain } from '../field.ts';
import { blot, carried, joined, patches, remnant } from '../mask.ts';
import { between, drawnOut, ease, noise, type Random, random, rough } from '../noise.ts';
import { type Point, placed, stroke, trickle } from '../stamp.ts';

const TANNIN = [0.3, 0.74, 1.5] as const;
const RESIN = [0.3, 0.8, 1.6] as const;
const DYE = [0.12, 1.35, 0.95] as const;
const INK = [1.7, 1.5, 0.55] as const;
const SMOKE = [0.28, 0.6, 1.3] as const;

type Bleed = FeatureOf<'bleed'>;

/**
 * A knot: rings off center and pressed together on one side, a dark cracked heart, resin drawn out along the grain from
 * its border.
 */
const knot = (b: Board, f: Bleed, from: number, [cx, cy]: Point): void => {
  const radius = f['size-mm'] / 2;
  const edge = blot([cx, cy], radius, from, 0.3, 1.2);
  everywhere(b, (i, x, y) => {
    const far = carried(x, y, 5, from + 7);
    const outer = edge(x + 0.25 * far * Math.sign(cx - x), y);
    if (outer > radius * 1.5) return;
    const [dx, dy] = [x - cx + radius * 0.18, y - cy - radius * 0.1];
    const d = Math.hypot(dx / 1.2, dy) * (1 + 0.16 * noise(x / (radius * 0.8), y / (radius * 0.8), from + 3));
    const phase =
      d / (radius * 0.2) + 0.9 * noise(x / 4, y / 4, from) + 0.35 * noise(x / 1.2, y / 1.2, from + 1);
    const ring = 0.5 + 0.5 * Math.sin(phase * 4.4) * (0.5 + 0.6 * noise(x / 5, y / 5, from + 4));
    const depth = 1 - ease(-radius * 0.5, radius * 0.5, outer);
    const rim =
      Math.exp(-(((outer + radius * 0.1) / (radius * 0.16)) ** 2)) *
      (0.35 + 0.65 * remnant(x, y, radius * 0.7, from + 5));
    const split =
      ease(0.28, 0, Math.abs(dy - 0.35 * dx + 0.5 * noise(dx / 2, 3, from + 9))) *
      ease(radius * 0.5, radius * 0.1, d);
    const heart = Math.exp(-((d / (radius * 0.34)) ** 2));
    const drawn =
      Math.exp(-((dy / (radius * 0.75)) ** 2)) *
      Math.exp(-Math.max(0, outer) / (radius * 0.55)) *
      (0.5 + 0.5 * noise(x / 14, y / 0.9, from + 6));
    stain(
      b,
      i,
      RESIN,
      f.strength *
        Math.max(0, depth * (0.16 + 0.55 * ring) + 0.5 * rim + 0.5 * heart + 0.5 * split + 0.24 * drawn),
    );
  });
};

/** Under whole, even paint: deepest round a knot, drawn out soft along the late wood, gone in the rest. */
const tannin = (b: Board, f: Bleed, from: number): void => {
  const next = random(from + 2);
  const size = f['size-mm'];
  const cloud = patches(size * 1.1, from, 0.44, 0.9);
  const [kx, ky] = [b.widthMm * between(next, 0.3, 0.7), b.heightMm * between(next, 0.35, 0.65)];
  const radius = size * between(next, 0.16, 0.24);
  everywhere(b, (i, x, y) => {
    const [dx, dy] = [
      x - kx + 1.2 * noise(x / 7, y / 6, from + 8),
      y - ky + 0.8 * noise(x / 6, y / 5, from + 9),
    ];
    const d =
      Math.hypot(dx / 1.35, dy) * (1 + 0.24 * noise(x / (radius * 0.9), y / (radius * 0.8), from + 14));
    // The grain swings round the knot.
    const push = (radius * 1.9 * dy) / (Math.abs(dy) + radius) / (1 + (dx / 1.6 / (radius * 1.7)) ** 2);
    const ring =
      (y -
        push +
        6 * noise(x / 80, y / 17, from + 6) +
        0.7 * noise(x / 15, y / 5, from + 10) +
        0.3 * drawnOut(x, y, 5, 0.6, from + 13)) /
      3.4;
    const part = ring - Math.floor(ring);
    const band = 0.25 + 0.75 * ease(0.25, 0.85, part) * (1 - ease(0.88, 1, part));
    const far = carried(x, y, 3, from + 7);
    const share = cloud(x * 0.5 + 0.4 * far, y) * (0.75 + 0.4 * rough(x / 9, y / 4, from + 4, 2));
    const heart =
      Math.exp(-((d / radius) ** 2.2)) *
      (0.5 +
        0.45 * noise(x / (radius * 0.7), y / (radius * 0.55), from + 5) +
        0.2 * noise(x / 1.1, y / 0.8, from + 15) +
        // Of its rings a part of one or two comes through.
        0.5 *
          remnant(x, y, radius * 0.8, from + 16) *
          Math.max(0, Math.sin(d / (radius * 0.09) + 2.4 * noise(x / 3, y / 3, from + 17))) +
        0.7 *
          ease(0.4, 0.05, Math.abs(dy + 0.5 * dx + 0.7 * noise(dx / 1.6, 3, from + 18))) *
          ease(radius * 0.8, radius * 0.2, d));
    const rim =
      Math.exp(-(((d - radius * 1.08) / (radius * 0.16)) ** 2)) *
      remnant(x, y, radius * 0.9, from + 12) *
      1.3;
    const aura = Math.exp(-d / (radius * 1.9));
    const depth =
      band * Math.max(0, 0.14 * share + 0.7 * aura) + 0.02 * share + 1.2 * heart + 0.25 * rim + 0.34 * aura;
    stain(b, i, TANNIN, f.strength * 0.95 * Math.max(0, depth));
    // The brush marks of the paint lie over it all, whole.
    const lean = y + 0.09 * x;
    raise(b, i, 5 * drawnOut(x, lean, 18, 1, from + 19) + 3 * drawnOut(x, lean, 8, 0.4, from + 20));
  });
};

/** Dye that rose where an old stain lay: soft, with inner shores, and creeping on along the grain below. */
const dye = (b: Board, f: Bleed, from: number, center: Point): void => {
  const next = random(from + 1);
  const radius = f['size-mm'] / 2;
  const blots = Array.from({ length: 9 }, (_, n) => {
    const near = n < 4;
    const at: Point =
      n === 0
        ? center
        : near
          ? [center[0] + between(next, -1.5, 1.5) * radius, center[1] + between(next, -0.8, 0.8) * radius]
          : [next() * b.widthMm, next() * b.heightMm];
    const size = radius * (n === 0 ? 0.75 : between(next, 0.08, 0.5, 1.8));
    const stretch = between(next, 1.05, 1.7);
    return {
      at,
      reach: size * stretch * 2 + radius,
      edge: blot(at, size, from + n, 0.5, stretch, between(next, -9, 9)),
    };
  });
  everywhere(b, (i, x, y) => {
    let d = 1e9;
    const px = x + 1.6 * rough(x / 9, y / 8, from + 9, 2);
    const py = y + 1.4 * rough(x / 9, y / 8, from + 11, 2);
    for (const { at, reach, edge } of blots)
      if (Math.abs(x - at[0]) < reach && Math.abs(y - at[1]) < reach)
        d = joined(d, edge(px, py), radius * 0.4);
    if (d > radius * 1.4) return;
    d += 0.35 * rough(x / 3, y / 3, from + 10, 2);
    // A wide fog, with a shore where the wet stood still for a while.
    const core = 1 - ease(-radius * 0.7, radius * 0.5, d);
    const shore =
      Math.exp(-(((d - radius * 0.02) / (radius * (d > 0 ? 0.07 : 0.16))) ** 2)) *
      remnant(x, y, 8, from + 14);
    const halo = Math.exp(-((Math.max(0, d + radius * 0.2) / (radius * 0.6)) ** 1.5));
    const share = 0.3 * core + 0.24 * halo + 0.17 * shore;
    const grainy = 0.9 + 0.26 * rough(x / 8, y / 6, from + 12, 3) + 0.05 * noise(x / 0.5, y / 0.5, from + 13);
    if (share > 0.01) stain(b, i, DYE, f.strength * share * grainy);
  });
};

/** Writing come up from below: strokes thick and thin as the pen was pressed, feathered, paler here and there. */
const ink = (b: Board, f: Bleed, [x, y]: Point, from: number): void => {
  const next = random(from + 3);
  const size = f['size-mm'] / 2;
  // A hurried hand: letters of unequal height and width, some looped, some only a wave; the pen lifts now and then.
  const words: Point[][] = [];
  let word: Point[] = [];
  let [on, down] = [-size * 1.5, 0];
  while (on < size * 1.5) {
    const tall = size * (next() < 0.24 ? between(next, 0.75, 1.1) : between(next, 0.28, 0.42));
    const below = next() < 0.14 ? -0.9 : 1;
    const wide = size * between(next, 0.16, 0.34);
    const looped = between(next, -0.15, 0.9);
    for (let t = 0; t < 1; t += 0.05) {
      const up = below * tall * (0.5 - 0.5 * Math.cos(2 * Math.PI * t));
      word.push([x + on + wide * (t + 0.5 * looped * Math.sin(2 * Math.PI * t)) + 0.32 * up, y + down - up]);
    }
    on += wide;
    down += size * between(next, -0.035, 0.03);
    if (next() < 0.22 || on >= size * 1.5) {
      words.push(word);
      word = [];
      on += size * between(next, 0.08, 0.2);
    }
  }
  const half = 0.26;
  const draw = (points: readonly Point[], id: number) => {
    const total = points.reduce(
      (sum, [px, py], n) => (n === 0 ? 0 : sum + Math.hypot(px - points[n - 1]![0], py - points[n - 1]![1])),
      0,
    );
    stroke(b, points, half * 5, (i, d, run) => {
      const pressed = Math.max(0.2, 0.8 + 0.55 * noise(run / 2.3, 3, id) + 0.25 * noise(run / 0.7, 5, id));
      const wide = half * (0.4 + 0.6 * pressed);
      const nick = 0.09 * noise(run / 0.25, d / 0.2, id + 1);
      const body = ease(wide * 1.5, wide * 0.2, d + nick);
      // Where the pen stood, at both ends of a stroke, more ink went in and crept away.
      const stood = Math.exp(-run / 0.7) + Math.exp(-Math.max(0, total - run) / 0.7);
      const feather =
        Math.exp(-d / (half * (1.1 + 1.1 * Math.max(0, noise(run / 3, 9, id + 2)) + 0.8 * stood))) *
        (1 + 1.2 * stood);
      const risen = 0.45 + 0.75 * ease(-0.5, 0.5, noise(run / 6, 7, id + 3));
      stain(b, i, INK, 1.35 * f.strength * risen * (pressed * 0.7 * body + 0.3 * feather));
    });
  };
  for (const [n, points] of words.entries()) draw(points, from + n);
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
  else if (f.from === 'ink') ink(b, f, center, from);
  else smoke(b, f, next);
};
