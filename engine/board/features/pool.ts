import type { FeatureOf } from '../../model/board.ts';
import { type Board, dim, everywhere, pour, raise, roughen, scatter } from '../field.ts';
import { between, ease, noise, random } from '../noise.ts';
import { disc } from '../stamp.ts';

/** A rounded groove across the board, more finish in it here than there: the pool climbs up its walls. */
export const pool = (b: Board, f: FeatureOf<'pool'>, from: number): void => {
  const half = f['width-mm'] / 2;
  const middle = b.heightMm * 0.5;
  const grooveAt = (t: number) => -f['depth-um'] * Math.sqrt(Math.max(0, 1 - t * t));
  if (f.look === 'amber') b.amber = Math.max(b.amber, 0.3);
  everywhere(b, (i, x, y) => {
    const d = Math.abs(y - middle);
    if (d > half * 1.3) return;
    const t = d / half;
    const groove = t < 1 ? grooveAt(t) : 0;
    const fill = f['film-um'] * (0.72 + 0.75 * noise(x / 15, 4, from) + 0.12 * noise(x / 4, 8, from));
    const shore = half * Math.sqrt(Math.max(0.02, 1 - (1 - Math.max(0.02, fill) / f['depth-um']) ** 2));
    // The surface is hollow: it hangs between its two shores.
    const level = -f['depth-um'] + fill + fill * 0.3 * (d / shore) ** 2 + 6 * noise(x / 3, y / 1.5, from + 1);
    const film = Math.max(0, level - groove);
    raise(b, i, Math.max(groove, level));
    pour(b, i, film);
    const deep = 1 - 0.35 * (1 - ease(0.1, 1, t));
    dim(b, i, [deep, deep, deep]);
    roughen(b, i, 0.009, ease(0, 20, film));
    if (f.look === 'cloudy') scatter(b, i, 0.0011 * film * (0.7 + 0.5 * noise(x / 6, y / 2, from + 2)));
  });
  const next = random(from);
  for (let n = 0; n < 9; n++) {
    const radius = between(next, 0.12, 0.34, 1.6);
    disc(b, [next() * b.widthMm, middle + between(next, -0.5, 0.5) * half], radius, (i, d) => {
      const t = d / radius;
      if (t < 1 && b.film[i]! > 120) raise(b, i, radius * 260 * (1 - t * t));
    });
  }
};
