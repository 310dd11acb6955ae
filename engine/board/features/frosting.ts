import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { cells, rough } from '../noise.ts';

/** Even whitish matte of very fine crystals, as on frost. */
export const frosting = (b: Board, f: FeatureOf<'frosting'>, from: number): void => {
  const cell = { first: 0, second: 0, id: 0 };
  everywhere(b, (i, x, y) => {
    const bend = 0.6 * rough(x / 0.8, y / 0.8, from + 1, 1);
    cells(x / 0.62 + bend, y / 0.62 - bend, from, cell);
    const crystal = Math.min(1, (cell.second - cell.first) * 2.2);
    raise(b, i, 9 * f.strength * crystal);
    scatter(b, i, f.strength * (0.1 + 0.09 * crystal + 0.03 * rough(x / 18, y / 18, from + 3, 2)));
    roughen(b, i, 0.24, 0.9 * f.strength);
  });
};
