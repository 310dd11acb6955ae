import type { FeatureOf } from '../../model/board.ts';
import { type Board, dim, everywhere, pour, raise, roughen, scatter } from '../field.ts';
import { between, ease, noise, random } from '../noise.ts';
import { disc } from '../stamp.ts';

/**
 * A rounded groove across the board: finish has run together in it, deep here and shallow there, and climbs its walls
 * in a thin bright line.
 */
export const pool = (b: Board, f: FeatureOf<'pool'>, from: number): void => {
  const half = f['width-mm'] / 2;
  const middle = b.heightMm * 0.5;
  // A cove with eased shoulders, as a cutter and sandpaper leave it.
  const grooveAt = (t: number) => -f['depth-um'] * Math.exp(-((t * 1.28) ** 2.6));
  if (f.look === 'amber') b.amber = Math.max(b.amber, 0.36);
  everywhere(b, (i, x, y) => {
    const line = middle + 0.12 * noise(x / 13, 6, from + 5);
    const d = Math.abs(y - line);
    const t = d / half;
    if (t > 2) return;
    const groove = grooveAt(t);
    const run = 0.9 + 0.4 * noise(x / 26, 4, from) + 0.06 * noise(x / 9, 8, from);
    const fill = f['film-um'] * Math.max(0.12, run);
    // The surface hangs between its two shores; skinned over, it drew together to fine folds.
    const fold =
      (1 - Math.abs(noise(x / 1.5 + 2 * noise(x / 5, y / 2, from + 6), y / 0.9, from + 1)) * 2) *
      ease(0.75, 1.2, run);
    const level =
      -f['depth-um'] + fill * (0.42 + 1.25 * t * t) + 3 * noise(x / 6, y / 2.4, from + 7) + 4 * fold;
    // The film thins out up the wall instead of ending.
    const over = level - groove;
    const film = over > 16 ? over : 16 * Math.exp((over - 16) / 18);
    const wet = ease(1.25, 0.85, t);
    raise(b, i, groove + film * wet);
    pour(b, i, film * wet);
    const shore = Math.exp(-(((over - 14) / 16) ** 2)) * wet;
    raise(b, i, 12 * shore * (0.6 + 0.6 * noise(x / 2.6, y > line ? 1 : 9, from + 3)));
    const deep = 1 - 0.42 * ease(0.9, 0, t);
    dim(b, i, [deep, deep, deep]);
    roughen(b, i, 0.009, ease(0, 30, film) * wet);
    if (f.look === 'cloudy') scatter(b, i, 0.0011 * film * wet * (0.7 + 0.5 * noise(x / 6, y / 2, from + 2)));
  });
  const next = random(from);
  for (let n = 0; n < 5; n++) {
    const radius = between(next, 0.06, 0.34, 2.4);
    disc(b, [next() * b.widthMm, middle + between(next, -0.5, 0.5) * half], radius, (i, d) => {
      const t = d / radius;
      if (t < 1 && b.film[i]! > 120) raise(b, i, radius * 60 * (1 - t * t));
    });
  }
};
