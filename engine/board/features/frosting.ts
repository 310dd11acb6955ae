import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { ease, noise, rough } from '../noise.ts';

/** Whitish matte of wrinkles too small to see singly: finely crumpled, a little denser where more oil stood. */
export const frosting = (b: Board, f: FeatureOf<'frosting'>, from: number): void => {
  const fine = Math.max(0.3, b.pitch * 2.2);
  everywhere(b, (i, x, y) => {
    const bx = x + 0.5 * noise(x / 1.3, y / 1.3, from + 1);
    const by = y + 0.5 * noise(x / 1.3, y / 1.3, from + 2);
    const fold = 1 - Math.abs(noise(bx / fine, by / (fine * 0.8), from)) * 2;
    const lies = 0.75 + 0.35 * ease(-0.5, 0.6, rough(x / 22, y / 12, from + 3, 2));
    raise(b, i, 13 * f.strength * lies * fold);
    scatter(b, i, Math.max(0, f.strength * lies * (0.17 + 0.05 * fold)));
    roughen(b, i, 0.22, 0.9 * f.strength);
  });
};
