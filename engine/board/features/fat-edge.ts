import type { FeatureOf } from '../../model/board.ts';
import { lowerEdge } from '../bench.ts';
import { type Board, everywhere, raise, roughen } from '../field.ts';
import { ease, noise } from '../noise.ts';

/** Lower edge of the board: the film left the arris and stands as a rope just inside it. */
export const fatEdge = (b: Board, f: FeatureOf<'fat-edge'>, from: number): void => {
  const half = f['width-mm'] / 2;
  const border = lowerEdge(b);
  everywhere(b, (i, x, y) => {
    const inside = border - y;
    if (inside < 0 || inside > f['inset-mm'] + half * 5) return;
    const at = f['inset-mm'] + half + 0.25 * noise(x / 9, 2, from);
    const section = Math.exp(-(((inside - at) / (half * 0.75)) ** 2));
    const rope = f['height-um'] * section * (0.8 + 0.35 * noise(x / 7, 6, from));
    const bare = 1 - ease(f['inset-mm'] * 0.35, f['inset-mm'] * 0.9, inside);
    const round = (Math.max(0, f['inset-mm'] - inside) / f['inset-mm']) ** 3 * 260;
    raise(b, i, rope - round - b.film[i]! * bare);
    b.film[i] = (b.film[i]! + rope) * (1 - 0.93 * bare);
    roughen(b, i, b.bareRoughness, 0.8 * bare);
  });
};
