import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise } from '../field.ts';
import { ease, noise } from '../noise.ts';

/** Pebbles pulled up by a roller nap: small separate peaks in all directions. */
export const stipple = (b: Board, f: FeatureOf<'stipple'>, from: number): void => {
  const s = f['spacing-mm'] * 0.85;
  everywhere(b, (i, x, y) => {
    const peak = noise(x / s, y / s, from) + 0.4 * noise((2.1 * x) / s, (2.1 * y) / s, from + 1);
    const rise = f['height-um'] * (ease(-0.25, 0.9, peak) - 0.35);
    raise(b, i, rise);
    b.film[i] = Math.max(3, b.film[i]! + rise);
  });
};
