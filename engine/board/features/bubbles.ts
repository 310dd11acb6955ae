import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, roughen, scaleFilm, scatter, stain } from '../field.ts';
import { between, random } from '../noise.ts';
import { places } from '../places.ts';
import { disc } from '../stamp.ts';

/** The rim of a bubble bends light away from what lies below. */
const RIM_SHADE = [0.3, 0.3, 0.3] as const;

/** Domes of air under a skin, and the pits where they broke. */
export const bubbles = (b: Board, f: FeatureOf<'bubbles'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  const domes = new Float32Array(b.height.length);
  for (const point of places(b, next, f['per-cm2'], f.along)) {
    const radius = between(next, low, high, 1.9) / 2;
    const open = next() < f.burst;
    const tall = radius * 1000 * 0.42;
    disc(b, point, radius * 1.7, (i, d) => {
      const t = d / radius;
      const foot = 0.1 * tall * Math.exp(-(((t - 1.05) / 0.3) ** 2));
      if (t >= 1) {
        raise(b, i, foot);
        return;
      }
      if (open) {
        raise(b, i, foot * 2.2 - Math.min(tall, 45) * (1 - t * t));
        scaleFilm(b, i, 0.3);
        scatter(b, i, 0.06 * t);
      } else {
        domes[i] = Math.max(domes[i]!, tall * Math.sqrt(1 - t * t));
        b.haze[i] = Math.max(b.haze[i]!, 0.02 + 0.12 * t ** 6);
        stain(b, i, RIM_SHADE, t ** 5);
        roughen(b, i, 0.02, 0.8);
      }
    });
  }
  for (let i = 0; i < domes.length; i++) raise(b, i, domes[i]!);
};
