import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, scatter } from '../field.ts';
import { fromCorner } from '../mask.ts';
import { ease, rough } from '../noise.ts';
import { VEIL_TONE } from './haze.ts';

/** Wet water-based film: droplets scatter evenly, more where the film is thicker and in the corners. */
export const milky = (b: Board, f: FeatureOf<'milky'>, from: number): void => {
  b.veil = [...VEIL_TONE[f.tone]];
  everywhere(b, (i, x, y) => {
    const thick =
      0.72 + 0.18 * rough(x / 38, y / 14, from, 2) + 0.5 * (1 - ease(0, 0.6, fromCorner(b, x, y)));
    scatter(b, i, 0.3 * f.strength * thick);
  });
};
