import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, tint } from '../field.ts';
import { turned } from '../mask.ts';
import { ease, noise, rough } from '../noise.ts';

const WAX = [0.86, 0.81, 0.69] as const;
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
      0.3;
    const deep = ease(PORE_UM, PORE_UM * 3, b.height[i]!);
    // It dried to crumbs, shrank from the walls of the pore and cracked across.
    const crumb = rough(u / 0.5, v / 0.3, from + 2, 2) + 0.5 * noise(u / 2.1, v / 0.2, from + 4);
    const broken = ease(-0.75, 0.25, crumb) * (0.7 + 0.35 * rough(u / 1.3, v / 0.5, from + 5, 1));
    const share = deep * ease(-0.2, 0.5, left) * broken * f.strength;
    // Where the cloth pressed most in, some was left on the face.
    const film = 0.1 * f.strength * ease(0.25, 0.9, left) * (0.6 + 0.4 * noise(u / 3, v / 0.5, from + 3));
    const wax = Math.min(0.95, Math.max(0, share + film));
    if (wax < 0.01) return;
    // Deep down it lies in the shade of the pore.
    const sunk = ease(-1, -9, b.height[i]!);
    tint(b, i, WAX, wax * (1 - 0.12 * sunk));
    raise(b, i, -0.6 * b.height[i]! * deep * share + 2 * share * crumb);
    roughen(b, i, 0.26, wax);
  });
};
