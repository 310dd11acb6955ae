import type { FeatureOf } from '../../model/board.ts';
import { type Board, pour, raise, roughen } from '../field.ts';
import { between, random } from '../noise.ts';
import { places } from '../places.ts';
import { disc } from '../stamp.ts';

/** Drops spat by a nozzle: round, flat-topped, glossier than the mist around them. */
export const spatter = (b: Board, f: FeatureOf<'spatter'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  for (const point of places(b, next, f['per-cm2'])) {
    const radius = between(next, low, high, 2.4) / 2;
    const tall = f['height-um'] * Math.min(1, 0.35 + (radius * 2) / high);
    disc(b, point, radius, (i, d) => {
      const t = Math.min(1, d / radius);
      const rise = tall * (1 - t * t) ** 0.8;
      raise(b, i, rise);
      pour(b, i, rise);
      roughen(b, i, 0.014, 0.9);
    });
  }
};
