import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere } from '../field.ts';
import { patches } from '../mask.ts';
import { VEIL_TONE } from './haze.ts';

/** Trapped water: soft-edged blue-white clouds in a smooth film. */
export const clouds = (b: Board, f: FeatureOf<'clouds'>, from: number): void => {
  const cloud = patches(f['size-mm'] * 1.4, from, 0.42, 0.75);
  b.veil = [...VEIL_TONE.blue];
  everywhere(b, (i, x, y) => {
    const share = cloud(x, y);
    b.haze[i] = b.haze[i]! + 0.34 * f.strength * share * share;
    b.film[i] = b.film[i]! * (1 + 0.4 * share);
  });
};
