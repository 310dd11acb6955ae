import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, tint } from '../field.ts';
import { turned } from '../mask.ts';
import { ease, noise } from '../noise.ts';

const WAX = [0.78, 0.71, 0.57] as const;
/** What lies deeper than this below the face is a pore, µm. */
const PORE_UM = -1.5;

/**
 * Wax dried pale in the pores themselves: full here, half gone there, clean elsewhere, with a breath of it on the face
 * beside them.
 */
export const waxInGrain = (b: Board, f: FeatureOf<'wax-in-grain'>, from: number): void => {
  const { along, across } = turned(f.angle);
  const long = f['length-mm'];
  const many = Math.min(1, f['per-cm2'] / 12);
  everywhere(b, (i, x, y) => {
    const u = along(x, y);
    const v = across(x, y);
    const left =
      noise(u / (long * 2.4), v / 1.6, from) +
      0.6 * noise(u / (long * 6), v / 6, from + 1) +
      0.5 * many +
      0.05;
    const deep = ease(PORE_UM, PORE_UM * 3, b.height[i]!);
    const broken = 0.75 + 0.4 * noise(u / 0.7, v / 0.15, from + 2);
    const share = 1.15 * deep * ease(-0.15, 0.3, left) * broken * f.strength;
    // Where the cloth pressed most in, some was left on the face.
    const film = 0.1 * f.strength * ease(0.25, 0.9, left) * (0.6 + 0.4 * noise(u / 3, v / 0.5, from + 3));
    const wax = Math.min(0.95, Math.max(0, share + film));
    if (wax < 0.01) return;
    tint(b, i, WAX, wax);
    raise(b, i, -0.6 * b.height[i]! * deep * share + 3 * share);
    roughen(b, i, 0.26, wax);
  });
};
