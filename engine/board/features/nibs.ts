import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, tint } from '../field.ts';
import { between, ease, noise, type Random, random } from '../noise.ts';
import { places } from '../places.ts';
import { cover, disc, type Point } from '../stamp.ts';

const PALE = [0.46, 0.43, 0.38] as const;
const DARK = [0.05, 0.045, 0.04] as const;

/** One angular grain, the film drawn up to it like a little tent, more on one side. */
export const grain = (b: Board, next: Random, point: Point, radius: number): void => {
  const tall = radius * 1000 * between(next, 0.2, 0.5);
  const color = next() < 0.6 ? PALE : DARK;
  const long = between(next, 0.45, 1);
  const turn = next() * 6.28;
  const id = Math.floor(next() * 1e6);
  const tent = between(next, 1.3, 2.4);
  const bared = next() < 0.3 ? 0.35 : 0.06;
  const seen = between(next, 0.2, 0.75);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  disc(b, point, radius * 5 + b.pitch, (i, _d, dx, dy) => {
    const u = dx * c + dy * s;
    const v = (dy * c - dx * s) / long;
    const d = Math.hypot(u, v);
    const edge = radius * (1 + 0.45 * noise(u / radius + 3.3, v / radius + 1.7, id));
    const share = Math.max(0, cover(b, edge - d, radius * 2));
    const off = Math.hypot(u - 0.4 * radius, v);
    raise(
      b,
      i,
      tall *
        // Most of it lies drowned: the film runs up over its edges.
        (bared * share * (0.8 + 0.4 * noise(u / (radius * 0.6), v / (radius * 0.6), id + 1)) +
          0.5 * Math.exp(-((d / (radius * 1.15)) ** 2)) +
          0.35 * Math.exp(-((off / (radius * tent)) ** 1.5)) * ease(5, 3, off / radius)),
    );
    tint(b, i, color, seen * share);
  });
};

/** Dust caught in the film: angular grains of all sizes, many small to each large one. */
export const nibs = (b: Board, f: FeatureOf<'nibs'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  for (const point of places(b, next, f['per-cm2'])) grain(b, next, point, between(next, low, high, 2.4) / 2);
};
