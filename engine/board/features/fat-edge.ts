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
    const swell = 0.85 + 0.4 * noise(x / 8, 6, from) + 0.2 * noise(x / 2.6, 9, from);
    const at = f['inset-mm'] + half * (0.85 + 0.3 * swell) + 0.3 * noise(x / 9, 2, from);
    // Steep toward the edge, running out into the face.
    const wide = half * (inside > at ? 0.7 + 0.5 * swell : 0.6);
    const section = Math.exp(-(((inside - at) / wide) ** 2));
    const rope = f['height-um'] * section * Math.max(0.5, swell);
    const bare = 1 - ease(f['inset-mm'] * 0.35, f['inset-mm'] * 0.9, inside);
    const round = (Math.max(0, f['inset-mm'] - inside) / f['inset-mm']) ** 3 * 260;
    raise(b, i, rope - round - b.film[i]! * bare);
    b.film[i] = (b.film[i]! + rope) * (1 - 0.93 * bare);
    roughen(b, i, b.bareRoughness, 0.8 * bare);
  });
};
