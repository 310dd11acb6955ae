import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, scaleFilm, scatter } from '../field.ts';
import { patches } from '../mask.ts';
import { VEIL_TONE } from './haze.ts';

/** Trapped water: soft-edged blue-white clouds in a smooth film. */
export const clouds = (b: Board, f: FeatureOf<'clouds'>, from: number): void => {
  const cloud = patches(f['size-mm'] * 1.4, from, 0.42, 0.75);
  b.veil = [...VEIL_TONE.blue];
  everywhere(b, (i, x, y) => {
    const share = cloud(x, y);
    scatter(b, i, 0.34 * f.strength * share * share);
    scaleFilm(b, i, 1 + 0.4 * share);
  });
};
