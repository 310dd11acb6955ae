import type { FeatureOf } from '../../model/board.ts';
import { type Board, pour, raise, roughen, scatter, stain } from '../field.ts';
import { joined } from '../mask.ts';
import { between, ease, noise, type Random, random } from '../noise.ts';
import { places } from '../places.ts';
import { disc, type Point } from '../stamp.ts';

type Gel = FeatureOf<'gel'>;
const AMBER_JELLY = [0.2, 0.65, 1.5] as const;
const CLEAR_JELLY = [0.04, 0.05, 0.08] as const;

/** A clot of jelly: a few lumps run together, sunk in the coat, which slopes off from them without a border. */
const clot = (b: Board, f: Gel, next: Random, point: Point, radius: number): void => {
  const id = Math.floor(next() * 1e6);
  const jelly = f.color === 'amber' ? AMBER_JELLY : CLEAR_JELLY;
  const parts = Array.from({ length: 3 + Math.floor(next() * 3) }, (_, n) => ({
    x: n === 0 ? 0 : between(next, -1.1, 1.1) * radius,
    y: n === 0 ? 0 : between(next, -0.7, 0.7) * radius,
    r: radius * (n === 0 ? 0.8 : between(next, 0.2, 0.6)),
  }));
  const tall = between(next, 90, 150);
  disc(b, point, radius * 3.4, (i, _d, dx, dy) => {
    const u = dx + radius * 0.3 * noise(dx / (radius * 0.75) + 3.1, dy / (radius * 0.75) + 8.7, id);
    const v = dy + radius * 0.3 * noise(dx / (radius * 0.75) + 6.3, dy / (radius * 0.75) + 1.9, id + 1);
    let out = 1e9;
    for (const part of parts) out = joined(out, Math.hypot(u - part.x, v - part.y) - part.r, radius * 0.6);
    const inside = ease(radius * 0.35, -radius * 0.55, out);
    const foot = Math.exp(-((Math.max(0, out + radius * 0.3) / (radius * 0.75)) ** 2));
    const knobs = noise(dx / (radius * 0.45), dy / (radius * 0.45), id + 2);
    raise(b, i, radius * (tall * inside * (0.9 + 0.14 * knobs) + 34 * foot));
    pour(b, i, radius * 90 * inside);
    stain(b, i, jelly, inside * (0.55 + 0.35 * inside + 0.1 * knobs));
    if (f.color !== 'amber') scatter(b, i, 0.045 * inside);
    roughen(b, i, 0.014, 0.8 * inside);
  });
};

/** A flake of skin from the can: torn out along a curve, laid in flat, one side rolled over. */
const flake = (b: Board, f: Gel, next: Random, point: Point, radius: number): void => {
  const id = Math.floor(next() * 1e6);
  const jelly = f.color === 'amber' ? AMBER_JELLY : CLEAR_JELLY;
  const turn = between(next, -0.7, 0.7);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const long = radius * between(next, 1.5, 3.4, 1.5);
  const wide = radius * between(next, 0.45, 1.1);
  const bow = between(next, -0.5, 0.5) / radius;
  disc(b, point, long + wide, (i, _d, dx, dy) => {
    const u = dx * c + dy * s;
    const v = dy * c - dx * s + bow * u * u * 0.3;
    const torn =
      0.4 * noise(u / (radius * 0.8), v / (radius * 0.8), id) + 0.2 * noise(u / 0.22, v / 0.22, id + 1);
    // One end is broad, the other runs out to a rag.
    const belly = wide * (0.75 + 0.5 * noise(u / long, 3, id + 2)) * (1 - 0.55 * ease(-long, long, u));
    const out = Math.max(Math.abs(v) - belly, (Math.abs(u) - long) * 0.8) + radius * torn * 0.55;
    const share = ease(0.1, -0.1, out);
    const rolled =
      Math.exp(-(((v - belly * 0.75) / (wide * 0.26)) ** 2)) * ease(long, long * 0.2, Math.abs(u));
    const crease = noise(u / (radius * 0.9), v / (radius * 0.3), id + 3);
    raise(
      b,
      i,
      share * (14 + 12 * crease + 52 * rolled) + 9 * Math.exp(-Math.max(0, out) / 0.5) * (1 - share),
    );
    stain(b, i, jelly, share * (0.26 + 0.12 * crease + 0.45 * rolled));
    scatter(b, i, share * 0.03);
    roughen(b, i, 0.06, share * (0.4 + 0.3 * crease));
  });
};

/** A string of half-set finish, drawn out by the brush: thick and thin, here and there torn off. */
const string = (b: Board, f: Gel, next: Random, [x, y]: Point, radius: number): void => {
  const id = Math.floor(next() * 1e6);
  const jelly = f.color === 'amber' ? AMBER_JELLY : CLEAR_JELLY;
  const long = radius * between(next, 5, 14);
  const half = between(next, 0.09, 0.2);
  disc(b, [x, y], long, (i, _d, dx, dy) => {
    const v = dy - 0.5 * noise(dx / 4, 1, id) - 0.12 * noise(dx / 0.9, 5, id);
    const thick =
      half * Math.max(0, 0.55 + 1.3 * noise(dx / 1.7, 9, id + 1)) * ease(long, long * 0.3, Math.abs(dx));
    if (thick < 0.02) return;
    const body = Math.exp(-((v / (thick + 0.06)) ** 2));
    raise(b, i, 190 * thick * body + 8 * Math.exp(-((v / 0.5) ** 2)) * Math.min(1, thick / half));
    stain(b, i, jelly, 2.6 * thick * body);
  });
};

/** Half-set finish from the can: clots of jelly under the coat, torn flakes of skin, and strings along the brush. */
export const gel = (b: Board, f: Gel, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  for (const point of places(b, next, f['per-cm2'])) {
    const radius = between(next, low, high, 1.6) / 2;
    if (next() < f.skins) flake(b, f, next, point, Math.max(radius, 0.7));
    else clot(b, f, next, point, radius);
    if (next() < 0.3) string(b, f, next, [next() * b.widthMm, next() * b.heightMm], Math.max(radius, 0.5));
  }
};
