import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scaleFilm, scatter } from '../field.ts';
import { turned } from '../mask.ts';
import { ease, noise, rough } from '../noise.ts';

/** Passes too far apart: wet glossy bands and dry dull ones between them, without an edge. */
export const sprayBands = (b: Board, f: FeatureOf<'spray-bands'>, from: number): void => {
  const { along, across } = turned(f.angle);
  everywhere(b, (i, x, y) => {
    const u = along(x, y);
    const v = across(x, y) + 2.5 * noise(u / 60, 1, from) + 0.5 * noise(u / 12, across(x, y) / 6, from + 1);
    const dry = ease(0.1, 0.9, 0.5 + 0.5 * Math.cos((2 * Math.PI * v) / f['width-mm']));
    const share = f.strength * dry;
    roughen(b, i, 0.22, Math.min(1, 1.1 * share));
    roughen(b, i, 0.012, f.strength * (1 - dry) * 0.9);
    raise(b, i, 3 * share * rough(x / 0.6, y / 0.6, from + 2, 1));
    scaleFilm(b, i, 1 - 0.5 * share);
    scatter(b, i, 0.022 * share);
  });
};
