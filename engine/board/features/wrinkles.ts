import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, pour, raise, roughen, stain, tint } from '../field.ts';
import { ease, noise, rough } from '../noise.ts';

const HONEY = [0.2, 0.55, 1.2] as const;
const UNDER = [0.47, 0.3, 0.15] as const;

/** A skin too large for what lies below: rounded folds that wind and fork. */
export const wrinkles = (b: Board, f: FeatureOf<'wrinkles'>, from: number): void => {
  const s = f['spacing-mm'];
  everywhere(b, (i, x, y) => {
    const edge = rough(x / 26, y / 26, from + 5, 2) + (f.cover - 0.5) * 1.4;
    if (f.cover < 1 && edge < -0.6) return;
    const bx = x + s * 1.1 * noise(x / (s * 2.2), y / (s * 2.2), from + 1);
    const by = y + s * 1.1 * noise(x / (s * 2.2), y / (s * 2.2), from + 2);
    const fold = 1.15 - Math.sqrt(noise(bx / (s * 1.6), by / s, from) ** 2 + 0.012) * 2.2;
    const small = 1.15 - Math.sqrt(noise(bx / (s * 0.8), by / (s * 0.6), from + 3) ** 2 + 0.02) * 2.2;
    // Each fold runs out by itself, the crests of the larger ones last.
    const lies =
      f.cover >= 1
        ? 1
        : ease(-0.12, 0.3, edge + 0.16 * fold + 0.1 * noise(x / (s * 3), y / (s * 3), from + 6));
    if (lies === 0) return;
    const rise = f['height-um'] * lies * (0.75 * ease(-0.3, 1, fold) + 0.14 * ease(-0.2, 1, small));
    raise(b, i, rise);
    pour(b, i, rise * 0.3);
    if (f.color === 'honey') {
      // A thick skin hides what lies under it.
      tint(b, i, UNDER, 0.4 * lies);
      raise(b, i, -0.7 * lies * Math.min(0, b.height[i]! - rise));
      stain(b, i, HONEY, lies * (0.8 + 0.5 * ease(0, 1, fold)));
      roughen(b, i, 0.014, lies);
    }
  });
};
