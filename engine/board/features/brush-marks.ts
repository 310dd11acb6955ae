import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise } from '../field.ts';
import { turned } from '../mask.ts';
import { drawnOut, noise } from '../noise.ts';

/** Furrows of bristles that did not flow out; they run long and fade in and out. */
export const brushMarks = (b: Board, f: FeatureOf<'brush-marks'>, from: number): void => {
  const { along, across } = turned(f.angle);
  const spacing = f['spacing-mm'];
  everywhere(b, (i, x, y) => {
    const u = along(x, y);
    const v = across(x, y) + 0.8 * noise(u / 26, across(x, y) / 12, from + 3);
    const wave =
      drawnOut(u, v, 34, spacing * 0.9, from) +
      0.55 * drawnOut(u, v, 19, spacing * 0.42, from + 1) +
      // Single bristles scratch it again before it sets.
      0.16 * drawnOut(u, v, 7, spacing * 0.2, from + 4);
    const rise = f['height-um'] * wave * (0.8 + 0.4 * noise(u / 40, v / 9, from + 2));
    raise(b, i, rise);
    b.film[i] = Math.max(2, b.film[i]! + rise);
  });
};
