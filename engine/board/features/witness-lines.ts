import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { ease, noise, rough } from '../noise.ts';

/** Sanded through one coat into the next: thin broken outlines round the high places, each coat with its own shine. */
export const witnessLines = (b: Board, f: FeatureOf<'witness-lines'>, from: number): void => {
  const size = f['size-mm'] * 1.5;
  const sanded = 0.42 * Math.max(0.4, f.strength);
  everywhere(b, (i, x, y) => {
    const paper = 0.006 * noise(x / 9, y / 0.35, from + 2) + 0.008 * noise(x / 22, y / 1.4, from + 3);
    const hill =
      0.9 * rough(x / (size * 1.25), y / size, from, 1) + 0.11 * rough(x / 13, y / 8, from + 1, 2) + paper;
    for (let ring = 0; ring < f.rings; ring++) {
      const d = (hill + 0.12 - ring * (0.14 + 0.05 * noise(x / 20, y / 20, from + 5))) * size * 0.6;
      if (d < -1.5) break;
      const inside = ease(-0.25, 0.2, d);
      const weight = 0.35 + 0.65 * ease(-0.35, 0.45, noise(x / 11, y / 11, from + 8 + ring));
      const line = weight * Math.exp(-((d / 0.16) ** 2));
      raise(b, i, -4 * inside + 1.6 * line);
      scatter(b, i, 0.05 * f.strength * line + 0.006 * f.strength * inside);
      roughen(b, i, ring & 1 ? 0.022 : 0.06, sanded * inside * (1 + 8 * paper));
    }
  });
};
