import type { FeatureOf } from '../../model/board.ts';
import { type Board, dim, everywhere, raise, roughen, scaleFilm, scatter } from '../field.ts';
import { turned } from '../mask.ts';
import { ease, noise } from '../noise.ts';

/** Where one pass overlapped a setting one: a straight band of double film and other sheen, faintly ridged. */
export const lap = (b: Board, f: FeatureOf<'lap'>, from: number): void => {
  const { along, across } = turned(f.angle);
  const width = f['width-mm'];
  const half = f['overlap-mm'] / 2;
  const offset = across(b.widthMm / 2, b.heightMm / 2);
  const phase = width > b.heightMm * 0.6 ? 0 : width * 0.22;
  everywhere(b, (i, x, y) => {
    const u = along(x, y);
    const v = across(x, y) - offset + phase + 0.35 * noise(u / 26, 3, from);
    const d = Math.abs(v - Math.round(v / width) * width);
    const band = 1 - ease(half - 0.25, half + 0.25, d);
    const edge = Math.exp(-(((d - half) / 0.42) ** 2));
    scaleFilm(b, i, 1 + 0.9 * f.strength * band);
    raise(b, i, f['ridge-um'] * (0.5 * band + edge));
    roughen(b, i, b.roughness[i]! * 2.6 + 0.02, f.strength * band);
    scatter(b, i, 0.06 * f.strength * band);
    dim(b, i, [1 - 0.1 * f.strength * band, 1 - 0.12 * f.strength * band, 1 - 0.16 * f.strength * band]);
  });
};
