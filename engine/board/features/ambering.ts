import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, scaleFilm } from '../field.ts';
import { rough } from '../noise.ts';

/** The film itself turns yellow; it is darker where it is thicker. */
export const ambering = (b: Board, f: FeatureOf<'ambering'>, from: number): void => {
  b.amber = Math.max(b.amber, f.strength);
  everywhere(b, (i, x, y) => {
    const uneven = 2 * (x / b.widthMm - 0.5) + 0.8 * rough(x / 34, y / 16, from, 2);
    scaleFilm(b, i, Math.max(0.15, 1 + f.drift * uneven));
  });
};
