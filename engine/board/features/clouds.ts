import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, scaleFilm, scatter } from '../field.ts';
import { ease, noise, rough } from '../noise.ts';
import { VEIL_TONE } from './haze.ts';

/** Trapped water: a blue-white veil inside a smooth, shining film, thicker here than there. */
export const clouds = (b: Board, f: FeatureOf<'clouds'>, from: number): void => {
  const s = f['size-mm'] * 1.5;
  b.veil = [...VEIL_TONE.milk];
  everywhere(b, (i, x, y) => {
    // A brush left it thicker here than there, line by line.
    const strokes = noise(x / 26, y / 0.8, from + 7) + 0.6 * noise(x / 40, y / 2.1, from + 8);
    const share = ease(-0.4, 0.75, rough((0.8 * x) / s, y / s, from, 3) + 0.04 * strokes);
    scatter(b, i, 0.42 * f.strength * (0.2 + 0.8 * share) * (1 + 0.06 * strokes));
    scaleFilm(b, i, 1 + 0.4 * share);
  });
};
