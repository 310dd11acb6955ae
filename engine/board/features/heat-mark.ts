import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { ease, noise, random, rough } from '../noise.ts';
import { placed } from '../stamp.ts';

/** A hot dish: the whole disc goes white or dull, and may be pressed in. */
export const heatMark = (b: Board, f: FeatureOf<'heat-mark'>, from: number): void => {
  const [cx, cy] = placed(b, random(from), f.at);
  const radius = f['diameter-mm'] / 2;
  everywhere(b, (i, x, y) => {
    const angle = Math.atan2(y - cy, x - cx);
    const bent = 0.035 * noise(1.6 * Math.cos(angle) + 3, 1.6 * Math.sin(angle), from + 4);
    const d = Math.hypot(x - cx, y - cy) * (1 + bent) + 0.5 * rough(x / 3, y / 3, from + 5, 2);
    if (d > radius * 1.2) return;
    const inside = 1 - ease(radius * 0.84, radius * 1.07, d);
    const s = radius * 0.42;
    const wx = x + 0.3 * s * rough(x / s + 3, y / s, from + 6, 2);
    const wy = y + 0.3 * s * rough(x / s, y / s + 5, from + 7, 2);
    // Whitest where the dish stood closest: in parts of its border and in a few clouds inside.
    const stood =
      ease(radius * 0.5, radius * 0.92, d) *
      ease(-0.6, 0.5, noise(2 * Math.cos(angle), 2 * Math.sin(angle) + 4, from + 8));
    const cloud =
      0.66 +
      0.4 * rough(wx / s, wy / s, from, 2) +
      0.14 * rough(wx / 3, wy / 3, from + 9, 2) +
      // The weave of what lay under the dish.
      0.09 * noise(wx / 0.9, wy / 2.4, from + 10) +
      0.09 * noise(wx / 2.4, wy / 0.9, from + 11) +
      0.4 * stood;
    scatter(b, i, 0.3 * f.strength * inside * Math.max(0, cloud));
    raise(b, i, -f['emboss-um'] * inside);
    roughen(b, i, 0.14, 0.6 * inside);
  });
};
