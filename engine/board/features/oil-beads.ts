import type { FeatureOf } from '../../model/board.ts';
import { type Board, pour, raise, roughen, stain } from '../field.ts';
import { between, ease, noise, random } from '../noise.ts';
import { inPore } from '../places.ts';
import { disc, type Point } from '../stamp.ts';

const OIL = [0.12, 0.3, 0.6] as const;

/** Oil wept from pores: flat shining dots along the grain, each on its pore in a thin wet halo; later scabs. */
export const oilBeads = (b: Board, f: FeatureOf<'oil-beads'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  const count = Math.max(1, Math.round((f['per-cm2'] * b.widthMm * b.heightMm) / 100));
  const points: Point[] = [];
  while (points.length < count) {
    let [x, y] = [between(next, -0.1, 0.9) * b.widthMm, next() * b.heightMm];
    for (let left = Math.ceil(between(next, 1, 7, 1.5)); left > 0 && points.length < count; left--) {
      points.push(inPore(b, [x, y]));
      x += between(next, 1.2, 5, 1.4);
      y += between(next, -0.25, 0.25);
    }
  }
  for (const point of points) {
    const radius = between(next, low, high, 2.4) / 2;
    // Some were wiped or sank back: a dull flat spot is left.
    const flat = next() < 0.25;
    const tall = radius * (f.set ? 70 : 80) * (flat ? 0.08 : between(next, 0.7, 1.2));
    const long = between(next, 1.15, f.set ? 2 : 2.6, 1.5);
    const lean = between(next, -0.12, 0.12);
    const id = Math.floor(next() * 1e6);
    disc(b, point, radius * 4, (i, _d, dx, dy) => {
      const v = dy + lean * dx;
      const ragged = (f.set ? 0.3 : 0.14) * noise((dx / radius) * 0.8 + 5, (v / radius) * 0.8, id);
      const t = Math.hypot(dx / long, v) / (radius * (1 + ragged));
      // The wood round it is soaked dark, farther along the grain than across.
      const soaked = Math.hypot(dx / 2.6, v) / (radius * (1.05 + 0.4 * noise(dx / 1.6, v / 0.3, id + 2)));
      const wet = Math.exp(-(soaked ** 2.2));
      stain(b, i, OIL, 0.75 * Math.exp(-(t ** 4)) * (flat ? 0.4 : 1) + 0.95 * wet);
      roughen(b, i, flat ? 0.12 : 0.03, 0.7 * wet);
      if (t >= 1.3) return;
      const crust = 0.8 + 0.3 * noise(dx / 0.4, dy / 0.4, id + 1);
      const dome = f.set ? Math.max(0, 1 - t ** 4) * crust : Math.exp(-((t * 1.25) ** 2.4));
      raise(b, i, tall * dome);
      pour(b, i, tall * 2 * dome);
      roughen(b, i, flat ? 0.13 : 0.009, ease(1.1, 0.85, t));
    });
  }
};
