import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, scaleFilm, scatter } from '../field.ts';
import { ease, rough } from '../noise.ts';
import { VEIL_TONE } from './haze.ts';

/** Trapped water: a blue-white veil inside a smooth, shining film, thicker here than there. */
export const clouds = (b: Board, f: FeatureOf<'clouds'>, from: number): void => {
  const s = f['size-mm'] * 1.5;
  b.veil = [...VEIL_TONE.milk];
  everywhere(b, (i, x, y) => {
    // Damp came in from a side and left unevenly: billows of all sizes, curdled where they are thick.
    const billow = rough(x / (0.3 * s), y / (0.3 * s), from + 7, 3);
    const share = ease(-0.45, 0.8, rough((0.8 * x) / s, y / s, from, 3) + 0.22 * billow);
    const curdled = rough(x / 1.3, y / 1.3, from + 8, 2) + 0.5 * rough(x / 0.45, y / 0.45, from + 9, 1);
    scatter(b, i, 0.42 * f.strength * (0.16 + 0.84 * share) * (1 + 0.1 * share * curdled));
    scaleFilm(b, i, 1 + 0.4 * share);
  });
};
