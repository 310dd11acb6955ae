import type { FeatureOf } from '../../model/board.ts';
import { type Board, dim, everywhere, pour, raise, roughen, scatter } from '../field.ts';
import { ease, noise } from '../noise.ts';

/** A groove across the board with film gathered in it. */
export const pool = (b: Board, f: FeatureOf<'pool'>, from: number): void => {
  const half = f['width-mm'] / 2;
  const middle = b.heightMm * 0.5;
  if (f.look === 'amber') b.amber = Math.max(b.amber, 0.16);
  everywhere(b, (i, x, y) => {
    const d = Math.abs(y - middle);
    if (d > half * 1.25) return;
    const t = d / half;
    const groove = -f['depth-um'] * (1 - ease(0.1, 1.1, t));
    const fill = f['film-um'] * (0.78 + 0.4 * noise(x / 16, 4, from));
    const level = -f['depth-um'] + fill + fill * 0.35 * t * t;
    const film = Math.max(0, level - groove);
    raise(b, i, Math.max(groove, level));
    pour(b, i, film);
    const deep = 1 - 0.3 * (1 - ease(0.1, 1.1, t));
    dim(b, i, [deep, deep, deep]);
    const wet = ease(0, 30, film);
    roughen(b, i, 0.01, wet);
    if (f.look === 'cloudy') scatter(b, i, 0.0011 * film * (0.7 + 0.5 * noise(x / 6, y / 2, from + 2)));
  });
};
