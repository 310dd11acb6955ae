import type { FeatureOf } from '../../model/board.ts';
import { type Board, pour, raise, roughen, stain } from '../field.ts';
import { between, noise, random } from '../noise.ts';
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
      points.push([x, y]);
      x += between(next, 1.2, 5, 1.4);
      y += between(next, -0.25, 0.25);
    }
  }
  for (const point of points) {
    const radius = between(next, low, high, 2) / 2;
    const tall = radius * (f.set ? 60 : 55);
    const long = between(next, 1, f.set ? 1.5 : 1.25);
    const id = Math.floor(next() * 1e6);
    disc(b, point, radius * 2.4, (i, _d, dx, dy) => {
      const ragged = (f.set ? 0.3 : 0.1) * noise((dx / radius) * 1.2 + 5, (dy / radius) * 1.2, id);
      const t = Math.hypot(dx / long, dy) / (radius * (1 + ragged));
      const halo = Math.hypot(dx / 1.9, dy) / radius;
      stain(b, i, OIL, 0.55 * Math.exp(-((t / 1.05) ** 4)) + 0.35 * Math.exp(-(halo ** 2)));
      if (t >= 1) return;
      raise(
        b,
        i,
        tall * (f.set ? (1 - t ** 4) * (0.8 + 0.3 * noise(dx / 0.4, dy / 0.4, id + 1)) : (1 - t * t) ** 0.9),
      );
      pour(b, i, tall * 2 * (1 - t * t));
      roughen(b, i, 0.01, 1);
    });
  }
};
