import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, tint } from '../field.ts';
import { between, random } from '../noise.ts';
import { places } from '../places.ts';
import { cover, disc } from '../stamp.ts';

const SHADE = [0.012, 0.011, 0.01] as const;

/** Open holes through the film: dark, with a lit far wall and a slightly raised lip. */
export const pinholes = (b: Board, f: FeatureOf<'pinholes'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  for (const point of places(b, next, f['per-cm2'], f.along)) {
    const radius = between(next, low, high, 1.4) / 2;
    disc(b, point, radius * 1.8 + b.pitch, (i, d) => {
      const share = Math.max(0, cover(b, radius - d, radius * 2));
      const lip = Math.exp(-(((d - radius * 1.25) / (radius * 0.4)) ** 2));
      raise(b, i, -42 * share + 5 * lip);
      tint(b, i, SHADE, 0.8 * share);
    });
  }
};
