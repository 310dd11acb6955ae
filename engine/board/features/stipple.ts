import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise } from '../field.ts';
import { ease, noise } from '../noise.ts';

/** Pebbles pulled up by a roller nap: small rounded peaks in all directions, a little higher where the roller lifted. */
export const stipple = (b: Board, f: FeatureOf<'stipple'>, from: number): void => {
  const s = f['spacing-mm'] * 0.85;
  everywhere(b, (i, x, y) => {
    const u = x + 0.16 * s * noise(x / (1.7 * s), y / (1.7 * s), from + 3);
    const v = y + 0.16 * s * noise(x / (1.7 * s), y / (1.7 * s), from + 4);
    const peak =
      noise((0.8 * u + 0.6 * v) / s, (0.8 * v - 0.6 * u) / s, from) +
      0.55 * noise((0.96 * u - 0.28 * v) / (s * 0.8), (0.96 * v + 0.28 * u) / (s * 0.8), from + 1);
    const lifted = 1 + 0.25 * noise(x / 18, y / 18, from + 5);
    const rise = f['height-um'] * lifted * (ease(-0.35, 1.05, peak) - 0.35);
    raise(b, i, rise);
    b.film[i] = Math.max(3, b.film[i]! + rise);
  });
};
