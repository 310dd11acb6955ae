import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, scatter } from '../field.ts';
import { fromCorner, patches } from '../mask.ts';
import { ease, noise, rough } from '../noise.ts';

/** S·X of the worst veil; over black it lifts L* to about 50. */
const WORST_VEIL = 0.2;

export const VEIL_TONE = {
  neutral: [1, 1, 1],
  blue: [0.78, 1, 1.3],
  milk: [0.9, 1, 1.13],
  pink: [1.16, 0.92, 1.02],
  warm: [1.12, 1, 0.8],
} as const;

/** Flatting agent or disagreeing layers: a smooth veil that also dulls a little. */
export const haze = (b: Board, f: FeatureOf<'haze'>, from: number): void => {
  const size = f['size-mm'];
  const patch = patches(size * 1.2, from, 0.5, 0.8);
  b.veil = [...VEIL_TONE[f.tone]];
  everywhere(b, (i, x, y) => {
    let share = 0.85 + 0.15 * rough(x / 30, y / 30, from, 2);
    if (f.spread === 'patchy') share = patch(x, y);
    else if (f.spread === 'bands')
      share = ease(
        -0.25,
        0.4,
        noise(x / (size * 5), y / (size * 0.62), from) + 0.12 * noise(x / 40, y / 2, from + 1),
      );
    else if (f.spread === 'corners')
      share = 1 - ease(0.1, 0.72, fromCorner(b, x, y) + 0.12 * rough(x / 12, y / 12, from, 2));
    else if (f.spread === 'grain')
      share =
        ease(-2, -7, b.height[i]!) * 0.9 +
        0.55 *
          ease(
            -0.1,
            0.7,
            noise(x / 9, y / 0.5, from) +
              0.5 * noise(x / 4, y / 0.22, from + 1) +
              0.5 * rough(x / size, y / size, from + 2, 2),
          );
    scatter(b, i, WORST_VEIL * f.strength * share);
    b.roughness[i] = b.roughness[i]! + 0.03 * f.strength * share;
  });
};
