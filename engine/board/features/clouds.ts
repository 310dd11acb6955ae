import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, scaleFilm, scatter } from '../field.ts';
import { ease, rough } from '../noise.ts';
import { VEIL_TONE } from './haze.ts';

/** Trapped water: a blue-white veil inside a smooth, shining film, thicker here than there. */
export const clouds = (b: Board, f: FeatureOf<'clouds'>, from: number): void => {
  const s = f['size-mm'] * 1.5;
  b.veil = [...VEIL_TONE.milk];
  everywhere(b, (i, x, y) => {
    const share = ease(-0.4, 0.75, rough((0.8 * x) / s, y / s, from, 3));
    scatter(b, i, 0.42 * f.strength * (0.22 + 0.78 * share));
    scaleFilm(b, i, 1 + 0.4 * share);
  });
};
