import type { FeatureOf } from '../../model/board.ts';
import { type Board, pour, raise, roughen, stain } from '../field.ts';
import { between, random } from '../noise.ts';
import { places } from '../places.ts';
import { disc } from '../stamp.ts';

const OIL = [0.12, 0.3, 0.6] as const;

/** Oil wept from pores: shining beads in rows, each darkening the wood; later scabs. */
export const oilBeads = (b: Board, f: FeatureOf<'oil-beads'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  for (const point of places(b, next, f['per-cm2'], 'pores')) {
    const radius = between(next, low, high, 1.3) / 2;
    const tall = radius * (f.set ? 110 : 230);
    disc(b, point, radius * 1.5, (i, d) => {
      const t = d / radius;
      stain(b, i, OIL, 0.75 * Math.exp(-((t / 1.05) ** 4)));
      if (t >= 1) return;
      raise(b, i, tall * (f.set ? 1 - t ** 4 : 1 - t * t));
      pour(b, i, tall * 2 * (1 - t * t));
      roughen(b, i, 0.01, 1);
    });
  }
};
