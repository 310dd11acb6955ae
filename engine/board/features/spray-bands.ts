import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scaleFilm, scatter } from '../field.ts';
import { turned } from '../mask.ts';
import { noise, rough } from '../noise.ts';

/** Passes too far apart: wet glossy bands and dry dull ones, without an edge. */
export const sprayBands = (b: Board, f: FeatureOf<'spray-bands'>, from: number): void => {
  const { along, across } = turned(f.angle);
  everywhere(b, (i, x, y) => {
    const v = across(x, y) + 1.2 * noise(along(x, y) / 40, across(x, y) / 30, from);
    const dry = 0.5 + 0.5 * Math.cos((2 * Math.PI * v) / f['width-mm']);
    const share = f.strength * dry * dry;
    roughen(b, i, 0.2, 0.85 * share);
    raise(b, i, 5 * share * rough(x / 0.5, y / 0.5, from + 2, 1));
    scaleFilm(b, i, 1 - 0.5 * share);
    scatter(b, i, 0.014 * share);
  });
};
