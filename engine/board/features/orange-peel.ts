import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen } from '../field.ts';
import { noise } from '../noise.ts';

/**
 * Round soft dimples of mixed size side by side, smooth and glossy like the skin of an orange: no crease between them.
 */
export const orangePeel = (b: Board, f: FeatureOf<'orange-peel'>, from: number): void => {
  const s = f['spacing-mm'] * 0.62;
  everywhere(b, (i, x, y) => {
    const u = x + 0.3 * s * noise(x / (2.3 * s), y / (2.3 * s), from + 1);
    const v = y + 0.3 * s * noise(x / (2.3 * s), y / (2.3 * s), from + 2);
    // Three turned layers of swells, so that no direction shows.
    const swell =
      noise(u / s, v / s, from) +
      0.75 * noise((0.8 * u + 0.6 * v) / (s * 1.25), (0.8 * v - 0.6 * u) / (s * 1.25), from + 3) +
      0.4 * noise((0.6 * u - 0.8 * v) / (s * 0.7), (0.8 * u + 0.6 * v) / (s * 0.7), from + 4);
    const rise = f['height-um'] * 0.42 * (swell - 0.22 * swell * swell);
    raise(b, i, rise);
    roughen(b, i, 0.036, 0.6);
    b.film[i] = Math.max(3, b.film[i]! + rise);
  });
};
