import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { ease, rough } from '../noise.ts';

/** Droplets that landed half dry: a sandy, dull zone. */
export const drySpray = (b: Board, f: FeatureOf<'dry-spray'>, from: number): void => {
  const grain = Math.max(f['grain-um'] / 1000, b.pitch * 1.1);
  everywhere(b, (i, x, y) => {
    let lies = 1;
    const drift = 0.1 * rough(x / 14, y / 14, from + 1, 2);
    if (f.spread === 'band') lies = ease(0.34, 0.78, y / b.heightMm + drift);
    else if (f.spread === 'corner')
      lies =
        1 - ease(0.25, 0.8, Math.hypot((b.widthMm - x) / b.widthMm, (b.heightMm - y) / b.heightMm) + drift);
    if (lies === 0) return;
    const sand = rough(x / (grain * 1.8), y / (grain * 1.8), from, 2);
    const piece = ease(0.1 - 0.3 * lies, 0.55, sand);
    raise(b, i, f['grain-um'] * 0.8 * f.strength * lies * piece);
    scatter(b, i, 0.085 * f.strength * lies * (0.35 + piece));
    roughen(b, i, 0.26, lies * f.strength);
  });
};
