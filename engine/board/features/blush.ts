import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, roughen, scatter } from '../field.ts';
import { patches } from '../mask.ts';
import { noise } from '../noise.ts';

/** Condensed moisture at the very surface: white to gray and dull, with a fine grain. */
export const blush = (b: Board, f: FeatureOf<'blush'>, from: number): void => {
  const patch = patches(f['size-mm'], from, 0.55, 0.42);
  everywhere(b, (i, x, y) => {
    const share = patch(x, y);
    scatter(b, i, 0.26 * f.strength * share * (1 + 0.25 * noise(x / 0.5, y / 0.5, from + 5)));
    roughen(b, i, 0.2, 0.8 * share * f.strength);
  });
};
