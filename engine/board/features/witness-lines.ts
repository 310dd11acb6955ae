import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { ease, rough } from '../noise.ts';

/** Sanded through one coat into the next: contour edges like a map, each coat with its own sheen. */
export const witnessLines = (b: Board, f: FeatureOf<'witness-lines'>, from: number): void => {
  const size = f['size-mm'] * 1.5;
  everywhere(b, (i, x, y) => {
    const hill = rough(x / size, y / size, from, 1) + 0.012 * rough(x / 3, y / 3, from + 1, 2);
    for (let ring = 0; ring < f.rings; ring++) {
      const d = (hill - 0.02 - ring * 0.13) * size * 0.6;
      const inside = ease(-0.18, 0.18, d);
      const line = Math.exp(-((d / 0.24) ** 2));
      raise(b, i, -7 * inside + 3 * line);
      scatter(b, i, 0.035 * f.strength * line);
      roughen(b, i, ring & 1 ? 0.03 : b.roughness[i]! * 2, 0.55 * f.strength * inside);
    }
  });
};
