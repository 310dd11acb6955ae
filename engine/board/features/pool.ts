import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, roughen } from '../field.ts';
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
    b.height[i] = b.height[i]! + Math.max(groove, level);
    b.film[i] = b.film[i]! + film;
    const wet = ease(0, 30, film);
    roughen(b, i, 0.01, wet);
    if (f.look === 'cloudy')
      b.haze[i] = b.haze[i]! + 0.0011 * film * (0.7 + 0.5 * noise(x / 6, y / 2, from + 2));
  });
};
