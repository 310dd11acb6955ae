import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, tint } from '../field.ts';
import { between, random } from '../noise.ts';
import { places } from '../places.ts';
import { cover, disc } from '../stamp.ts';

/** Dust under a skin of film: a hard point with a meniscus around it. */
export const nibs = (b: Board, f: FeatureOf<'nibs'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  for (const point of places(b, next, f['per-cm2'])) {
    const radius = between(next, low, high, 1.8) / 2;
    const tall = radius * 1000 * between(next, 0.4, 0.75);
    const pale = next() < 0.7;
    disc(b, point, radius * 4.5 + b.pitch, (i, d) => {
      const t = d / radius;
      const point0 = t < 1 ? tall * (1 - t) ** 0.7 : 0;
      raise(b, i, point0 + 0.22 * tall * Math.exp(-((t / 1.8) ** 2)));
      const share = 0.55 * Math.max(0, cover(b, radius * 0.7 - d, radius * 2));
      tint(b, i, pale ? [0.42, 0.4, 0.37] : [0.05, 0.045, 0.04], share);
    });
  }
};
