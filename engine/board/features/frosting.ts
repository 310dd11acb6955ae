import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, roughen } from '../field.ts';
import { cells, rough } from '../noise.ts';

/** Even whitish matte of very fine crystals, as on frost. */
export const frosting = (b: Board, f: FeatureOf<'frosting'>, from: number): void => {
  const cell = { first: 0, second: 0, id: 0 };
  everywhere(b, (i, x, y) => {
    cells(x / 0.55 + 0.5 * rough(x, y, from + 1, 1), y / 0.55, from, cell);
    const crystal = Math.min(1, (cell.second - cell.first) * 2.2);
    b.height[i] = b.height[i]! + 9 * f.strength * crystal;
    b.haze[i] = b.haze[i]! + f.strength * (0.1 + 0.09 * crystal + 0.03 * rough(x / 18, y / 18, from + 3, 2));
    roughen(b, i, 0.24, 0.9 * f.strength);
  });
};
