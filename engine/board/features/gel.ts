import type { FeatureOf } from '../../model/board.ts';
import { type Board, pour, raise, roughen, scatter, stain, tint } from '../field.ts';
import { between, noise, random } from '../noise.ts';
import { places } from '../places.ts';
import { cover, disc } from '../stamp.ts';
import { BODY_COLOR } from './body-color.ts';

const AMBER_JELLY = [0.2, 0.65, 1.5] as const;
const CLEAR_JELLY = [0.04, 0.05, 0.08] as const;

/** Lumps of jelly, smooth and glossy, and flakes of skin with torn edges. */
export const gel = (b: Board, f: FeatureOf<'gel'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  const color = BODY_COLOR[f.color];
  const jelly = f.color === 'amber' ? AMBER_JELLY : CLEAR_JELLY;
  for (const point of places(b, next, f['per-cm2'])) {
    const radius = between(next, low, high, 1.4) / 2;
    const skin = next() < f.skins;
    const id = Math.floor(next() * 1e6);
    disc(b, point, radius * 1.9, (i, d, dx, dy) => {
      const ragged = (skin ? 0.55 : 0.16) * noise((dx / radius) * 1.1, (dy / radius) * 1.1, id);
      const edge = radius * (1 + ragged);
      const share = Math.max(0, cover(b, edge - d, radius * 2));
      const t = Math.min(1, d / edge);
      if (skin) {
        const fold = 0.5 + 0.5 * noise(dx / (radius * 0.5), dy / (radius * 0.2), id + 1);
        raise(b, i, share * (55 + 70 * fold));
        tint(b, i, color, 0.5 * share);
      } else {
        b.height[i] =
          b.height[i]! +
          radius * 330 * share * Math.sqrt(1 - t * t) +
          14 * Math.exp(-Math.max(0, d - edge) / 0.3);
        stain(b, i, jelly, 1.3 * share * (1.1 - 0.6 * t));
        if (f.color !== 'amber') scatter(b, i, 0.05 * share);
        pour(b, i, radius * 330 * share);
        roughen(b, i, 0.012, share);
      }
    });
  }
};
