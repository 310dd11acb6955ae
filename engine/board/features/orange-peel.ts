import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise } from '../field.ts';
import { cells, rough } from '../noise.ts';

/** Round dimples side by side, smooth and glossy like the skin of an orange. */
export const orangePeel = (b: Board, f: FeatureOf<'orange-peel'>, from: number): void => {
  const s = f['spacing-mm'];
  const cell = { first: 0, second: 0, id: 0 };
  everywhere(b, (i, x, y) => {
    const bend = 0.22 * rough(x / s, y / s, from + 1, 1);
    cells(x / s + bend, y / s - bend, from, cell);
    const t = Math.min(1, cell.first * 1.75);
    const bowl = t * t * (3 - 2 * t);
    const rise = f['height-um'] * (bowl - 0.6 + 0.3 * rough(x / (2 * s), y / (2 * s), from + 2, 1));
    raise(b, i, rise);
    b.film[i] = Math.max(3, b.film[i]! + rise);
  });
};
