import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { turned } from '../mask.ts';
import { ease, noise } from '../noise.ts';

/** Flatting agent or drag in strings: light and dull lines along the strokes, hardly any relief. */
export const streaks = (b: Board, f: FeatureOf<'streaks'>, from: number): void => {
  const { along, across } = turned(f.angle);
  const s = f['spacing-mm'];
  everywhere(b, (i, x, y) => {
    const u = along(x, y);
    const v = across(x, y) + 0.8 * noise(u / 45, across(x, y) / 20, from + 4);
    const line = noise(u / 70, v / (s * 0.8), from) + 0.6 * noise(u / 40, v / (s * 0.3), from + 1);
    const pale = ease(0.1, 0.75, line) * ease(-0.6, 0.2, noise(u / 22, v / (2 * s), from + 2));
    const dull = ease(0.1, 0.7, -line);
    scatter(b, i, 0.13 * f.strength * pale);
    roughen(b, i, b.roughness[i]! * 2.4 + 0.02, f.strength * dull);
    raise(b, i, 0.7 * line);
  });
};
