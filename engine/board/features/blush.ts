import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, roughen, scatter } from '../field.ts';
import { patches } from '../mask.ts';
import { noise, rough } from '../noise.ts';

/** Condensed moisture at the very surface: a thin bluish bloom, densest in the middle, that takes the shine. */
export const blush = (b: Board, f: FeatureOf<'blush'>, from: number): void => {
  const patch = patches(f['size-mm'] * 1.25, from, 0.48, 1.25);
  b.veil = [0.97, 1, 1.08];
  everywhere(b, (i, x, y) => {
    const bloom = patch(x * 0.8, y);
    const share =
      bloom *
      bloom *
      (0.9 + 0.3 * rough(x / 5, y / 4, from + 5, 2) + 0.05 * noise(x / 0.5, y / 0.5, from + 6));
    scatter(b, i, 0.34 * f.strength * Math.max(0, share));
    roughen(b, i, 0.2, Math.min(1, 1.1 * share * f.strength));
  });
};
