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
    const cloud =
      0.55 +
      0.75 * rough(x / (radius * 0.45), y / (radius * 0.45), from, 3) +
      0.35 * ease(radius * 0.55, radius * 0.95, d);
    scatter(b, i, 0.3 * f.strength * inside * Math.max(0, cloud));
    raise(b, i, -f['emboss-um'] * inside);
    roughen(b, i, 0.14, 0.6 * inside);
  });
};
