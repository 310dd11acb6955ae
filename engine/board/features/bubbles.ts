import type { FeatureOf } from '../../model/board.ts';
import { type Board, roughen } from '../field.ts';
import { between, random } from '../noise.ts';
import { places } from '../places.ts';
import { disc } from '../stamp.ts';

/** Domes of air under a skin, and the pits where they broke. */
export const bubbles = (b: Board, f: FeatureOf<'bubbles'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  for (const point of places(b, next, f['per-cm2'], f.along)) {
    const radius = between(next, low, high, 1.9) / 2;
    const open = next() < f.burst;
    const tall = radius * 1000 * 0.42;
    disc(b, point, radius * 1.7, (i, d) => {
      const t = d / radius;
      const foot = 0.1 * tall * Math.exp(-(((t - 1.05) / 0.3) ** 2));
      if (t >= 1) {
        b.height[i] = b.height[i]! + foot;
        return;
      }
      if (open) {
        b.height[i] = b.height[i]! + foot * 2.2 - Math.min(tall, 45) * (1 - t * t);
        b.film[i] = b.film[i]! * 0.3;
        b.haze[i] = b.haze[i]! + 0.06 * t;
      } else {
        b.height[i] = b.height[i]! + tall * Math.sqrt(1 - t * t);
        b.haze[i] = b.haze[i]! + 0.03 + 0.16 * t ** 6;
        roughen(b, i, 0.02, 0.8);
      }
    });
  }
};
