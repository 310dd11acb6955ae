import type { FeatureOf } from '../../model/board.ts';
import { type Board, pour, raise, roughen, scatter, stain } from '../field.ts';
import { joined } from '../mask.ts';
import { between, ease, noise, type Random, random, rough } from '../noise.ts';
import { places } from '../places.ts';
import { disc, type Point, stroke, wander } from '../stamp.ts';

type Gel = FeatureOf<'gel'>;
const AMBER_JELLY = [0.1, 0.27, 0.6] as const;
const CLEAR_JELLY = [0.04, 0.05, 0.08] as const;

/** A clot of jelly: a few lumps run together, drowned in the coat, which slopes off from them without a border. */
const clot = (b: Board, f: Gel, next: Random, point: Point, radius: number): void => {
  const id = Math.floor(next() * 1e6);
  const jelly = f.color === 'amber' ? AMBER_JELLY : CLEAR_JELLY;
  const parts = Array.from({ length: 2 + Math.floor(next() * 4) }, (_, n) => ({
    x: n === 0 ? 0 : between(next, -1, 1) * radius,
    y: n === 0 ? 0 : between(next, -0.7, 0.7) * radius,
    r: radius * (n === 0 ? 0.75 : between(next, 0.2, 0.6)),
  }));
  const tall = between(next, 40, 110);
  disc(b, point, radius * 3.4, (i, _d, dx, dy) => {
    const u = dx + radius * 0.3 * noise(dx / (radius * 1.5) + 3.1, dy / (radius * 1.5) + 8.7, id);
    const v = dy + radius * 0.3 * noise(dx / (radius * 1.5) + 6.3, dy / (radius * 1.5) + 1.9, id + 1);
    let out = 1e9;
    for (const part of parts) out = joined(out, Math.hypot(u - part.x, v - part.y) - part.r, radius * 0.5);
    // Round on top, and the coat hangs down from it as a soft skirt.
    const deep = Math.min(1, Math.max(0, -out / (radius * 0.75)));
    const inside = ease(-radius * 0.6, radius * 0.55 + 0.08, -out) * (0.6 + 0.4 * deep);
    const foot = Math.exp(-((Math.max(0, out + radius * 0.3) / (radius * 1.1)) ** 2));
    const knobs = noise(dx / (radius * 0.5), dy / (radius * 0.5), id + 2);
    raise(b, i, radius * (0.62 * tall * inside * (1 + 0.12 * knobs) + 22 * foot));
    // Clear, it is lit from within.
    pour(b, i, radius * 420 * inside);
    // Clear jelly: the light that went in on one side lights up the other from within.
    const lit = ease(-0.6, 0.9, (dx + dy) / (radius * 1.5));
    const veins = noise(dx / (radius * 0.3) + 2, dy / (radius * 0.22), id + 3);
    stain(b, i, jelly, 0.12 * foot + inside * (0.6 + 0.75 * deep + 0.2 * knobs + 0.12 * veins - 0.3 * lit));
    if (f.color !== 'amber') scatter(b, i, 0.045 * inside);
    roughen(b, i, 0.02, 0.8 * inside);
  });
};

/** A flake of skin from the can: a thin torn scrap, laid in flat, creased, one side folded over itself. */
const flake = (b: Board, f: Gel, next: Random, point: Point, radius: number): void => {
  const id = Math.floor(next() * 1e6);
  const jelly = f.color === 'amber' ? AMBER_JELLY : CLEAR_JELLY;
  const turn = between(next, -1.2, 1.2);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const long = radius * between(next, 1, 2.2, 1.5);
  const wide = radius * between(next, 0.5, 1.1);
  const fold = wide * between(next, 0.1, 0.5);
  const askew = between(next, -0.35, 0.35);
  disc(b, point, (long + wide) * 1.2, (i, _d, dx, dy) => {
    const u = dx * c + dy * s + 0.3 * radius * noise(dx / radius + 4, dy / radius, id + 5);
    const v = dy * c - dx * s + 0.3 * radius * noise(dx / radius, dy / radius + 7, id + 6);
    const torn =
      0.4 * noise(u / (radius * 0.7), v / (radius * 0.7), id) + 0.2 * noise(u / 0.25, v / 0.25, id + 1);
    const t = Math.hypot(u / long, v / wide);
    const out = (t - 1) * wide + radius * torn * 0.5;
    // Where it is folded over, it ends straight and lies double.
    const crease = v + askew * u - fold;
    const lies = ease(0.16, -0.2, Math.max(out, crease));
    const double =
      lies * ease(-0.75 * wide, -0.55 * wide, crease + 0.2 * wide * noise(u / radius, 3, id + 4));
    const lip = Math.exp(-((crease / 0.13) ** 2)) * ease(0.1, -0.1, out);
    // Crumpled as film is: a few sharp folds that meet, flat between.
    const crumpled = rough(u / (radius * 0.9), v / (radius * 0.8), id + 3, 2);
    const wrinkle = 1.1 - 3 * Math.sqrt(crumpled * crumpled + 0.01);
    raise(
      b,
      i,
      // The coat drew over it: only its folds stand out sharp.
      lies * (7 + 7 * wrinkle) +
        8 * double +
        13 * lip +
        6 * Math.exp(-Math.max(0, out) / 0.6) * ease(0.8, 0, crease) * (1 - lies),
    );
    stain(b, i, jelly, lies * (0.34 + 0.2 * wrinkle) + 0.3 * double + 0.2 * lip);
    scatter(b, i, 0.012 * lies);
    roughen(b, i, 0.05, lies * (0.4 + 0.3 * wrinkle));
  });
};

/** A string of half-set finish, drawn out by the brush as it went: thick and thin, bent, here and there torn off. */
const string = (b: Board, f: Gel, next: Random, from: Point, radius: number): void => {
  const id = Math.floor(next() * 1e6);
  const jelly = f.color === 'amber' ? AMBER_JELLY : CLEAR_JELLY;
  const long = radius * between(next, 4, 11);
  const half = between(next, 0.07, 0.17);
  const line = wander(next, from, between(next, -0.45, 0.45), long, 1.8, 0.4);
  stroke(b, line, half * 5, (i, d, run) => {
    const thick =
      half *
      Math.max(0, 0.6 + noise(run / 2.3, 9, id) + 0.5 * noise(run / 0.9, 4, id + 1)) *
      ease(0, long * 0.12, run) *
      ease(long, long * 0.4, run);
    if (thick < 0.015) return;
    const body = Math.exp(-((d / (thick + 0.05)) ** 2));
    raise(b, i, 85 * thick * body + 5 * Math.exp(-((d / 0.4) ** 2)) * Math.min(1, thick / half));
    stain(b, i, jelly, 2.8 * thick * body);
  });
};

/** Half-set finish from the can: clots of jelly under the coat, torn flakes of skin, and strings along the brush. */
export const gel = (b: Board, f: Gel, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  for (const point of places(b, next, f['per-cm2'])) {
    const radius = between(next, low, high, 2.4) / 2;
    if (next() < f.skins) flake(b, f, next, point, Math.max(radius, 0.7));
    else clot(b, f, next, point, radius);
    if (next() < 0.14) string(b, f, next, [next() * b.widthMm, next() * b.heightMm], Math.max(radius, 0.5));
  }
};
