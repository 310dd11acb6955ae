import type { FeatureOf } from '../../model/board.ts';
import { PAINT, type Rgb, WOOD } from '../base.ts';
import { type Board, dim, everywhere, raise, scatter, tint } from '../field.ts';
import { turned } from '../mask.ts';
import { ease, noise } from '../noise.ts';

/** Loosened pigment: thin spots where what lies below shows, and its color carried on in strings. */
export const colorDrag = (b: Board, f: FeatureOf<'color-drag'>, from: number): void => {
  const under: Rgb = f.under === 'white' ? PAINT.white : WOOD.oak.early;
  const width = f['width-mm'];
  const { along, across } = turned(f.angle);
  everywhere(b, (i, x, y) => {
    const u = along(x, y);
    const v = across(x, y);
    const strings = noise(u / 50, v / 0.9, from + 1) + 0.6 * noise(u / 24, v / 0.35, from + 2);
    const smear = noise(u / (width * 2.6), v / width, from);
    const thin = ease(0.22, 0.75, smear + 0.42 * strings) * f.strength;
    tint(b, i, under, 0.62 * thin);
    const carried = ease(0.05, 0.6, -smear + 0.4 * strings) * f.strength;
    scatter(b, i, 0.02 * carried);
    dim(b, i, [1 - 0.45 * carried, 1 - 0.45 * carried, 1 - 0.4 * carried]);
    raise(b, i, 3 * strings * f.strength);
  });
};
