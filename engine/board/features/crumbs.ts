import type { FeatureOf } from '../../model/board.ts';
import { type Board, roughen, tint } from '../field.ts';
import { between, noise, random } from '../noise.ts';
import { places } from '../places.ts';
import { cover, disc } from '../stamp.ts';
import { BODY_COLOR } from './body-color.ts';

/** Bits of a foam tool: open-pored lumps of its color. */
export const crumbs = (b: Board, f: FeatureOf<'crumbs'>, from: number): void => {
  const next = random(from);
  const color = BODY_COLOR[f.color];
  for (const point of places(b, next, f['per-cm2'])) {
    const radius = between(next, f['diameter-mm'][0], f['diameter-mm'][1], 1.5) / 2;
    const id = Math.floor(next() * 1e6);
    const long = between(next, 0.7, 1.3);
    disc(b, point, radius * 2, (i, d, dx, dy) => {
      const edge =
        radius *
        (1 + 0.5 * noise((dx * long) / radius, dy / radius, id) + 0.22 * noise(dx / 0.3, dy / 0.3, id + 1));
      const share = Math.max(0, cover(b, edge - d, radius * 2));
      const pores = Math.max(0, noise(dx / 0.3, dy / 0.3, id + 2));
      const dome = share * Math.sqrt(Math.max(0, 1 - (d / Math.max(edge, 1e-6)) ** 2));
      b.height[i] =
        b.height[i]! +
        radius * 300 * (0.35 * share + dome - 0.2 * pores * share) +
        26 * Math.exp(-Math.max(0, d - edge) / 0.3);
      const deep = 1 - 0.45 * pores;
      tint(b, i, [color[0] * deep, color[1] * deep, color[2] * deep], share * 0.95);
      roughen(b, i, 0.3, share);
    });
  }
};
