import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { drawnOut, ease, noise, rough } from '../noise.ts';

/** Sanded through one coat into the next: thin broken outlines round the high places, each coat with its own shine. */
export const witnessLines = (b: Board, f: FeatureOf<'witness-lines'>, from: number): void => {
  const size = f['size-mm'] * 1.5;
  const sanded = 0.42 * Math.max(0.4, f.strength);
  everywhere(b, (i, x, y) => {
    const lean = y + 0.42 * x;
    const paper =
      0.006 * drawnOut(x, lean, 5, 0.35, from + 2) + 0.006 * drawnOut(x, y - 0.3 * x, 8, 1.1, from + 3);
    const hill =
      0.9 * rough(x / (size * 1.25), y / size, from, 1) +
      0.11 * rough(x / 13, y / 8, from + 1, 2) +
      0.5 * paper;
    for (let ring = 0; ring < f.rings; ring++) {
      const d = (hill + 0.12 - ring * (0.14 + 0.05 * noise(x / 20, y / 20, from + 5))) * size * 0.6;
      if (d < -3) break;
      // The coat runs out to nothing over a long way here, and ends short there.
      const fades = ease(-0.15, 0.55, noise(x / 17, y / 14, from + 20 + ring));
      const inside = ease(-0.3 - 2.2 * fades, 0.25 + 1.1 * fades, d);
      const weight =
        ease(
          -0.6,
          0.35,
          noise(x / 13, y / 11, from + 8 + ring) + 0.35 * noise(x / 2.6, y / 2.1, from + 30 + ring),
        ) *
        (1 - 0.75 * fades);
      const wide = 0.1 + 0.22 * ease(-0.5, 0.5, noise(x / 7, y / 6, from + 40 + ring)) + 0.3 * fades;
      const line = weight * Math.exp(-((d / wide) ** 2));
      // Toward the thick side its torn border is drawn out along the way of the paper.
      const drawn = weight * ease(-1.4, 0, d) * ease(0.3, 0, d) * Math.max(0, 30 * paper);
      raise(b, i, -4 * inside + 1.1 * line);
      scatter(b, i, f.strength * (0.042 * line + 0.03 * drawn + 0.006 * inside));
      roughen(b, i, ring & 1 ? 0.022 : 0.06, sanded * inside * (1 + 14 * paper));
    }
  });
};
