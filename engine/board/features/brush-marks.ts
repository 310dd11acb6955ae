import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise } from '../field.ts';
import { turned } from '../mask.ts';
import { noise } from '../noise.ts';

/** Furrows of bristles that did not flow out; they run long and fade in and out. */
export const brushMarks = (b: Board, f: FeatureOf<'brush-marks'>, from: number): void => {
  const { along, across } = turned(f.angle);
  const spacing = f['spacing-mm'];
  everywhere(b, (i, x, y) => {
    const u = along(x, y);
    const v = across(x, y) + 0.5 * noise(u / 30, across(x, y) / 12, from + 3);
    const wave =
      noise(u / 55, v / (spacing * 0.9), from) + 0.55 * noise(u / 34, v / (spacing * 0.45), from + 1);
    const rise = f['height-um'] * wave * (0.8 + 0.4 * noise(u / 40, v / 9, from + 2));
    raise(b, i, rise);
    b.film[i] = Math.max(2, b.film[i]! + rise);
  });
};
