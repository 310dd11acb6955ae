import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { ease, noise, rough } from '../noise.ts';

/**
 * Whitish matte of wrinkles too small to see singly: finely crumpled, whiter where more oil stood, with single sparks.
 */
export const frosting = (b: Board, f: FeatureOf<'frosting'>, from: number): void => {
  const fine = Math.max(0.32, b.pitch * 2.4);
  // Soft early wood, which is paler, drank most and frosts most.
  const mean = b.red.reduce((sum, one) => sum + one, 0) / b.red.length;
  everywhere(b, (i, x, y) => {
    const bx = x + 0.6 * noise(x / 1.3, y / 1.3, from + 1);
    const by = y + 0.6 * noise(x / 1.3, y / 1.3, from + 2);
    const fold = 1 - Math.abs(noise(bx / fine, by / (fine * 0.8), from)) * 2;
    const early = ease(0.7, 1.25, b.red[i]! / mean);
    const lies = (0.5 + 0.55 * ease(-0.45, 0.6, rough(x / 24, y / 11, from + 3, 3))) * (0.85 + 0.4 * early);
    const spark = ease(0.62, 0.85, noise(x / (fine * 0.7), y / (fine * 0.7), from + 6));
    raise(b, i, f.strength * lies * (10 * fold + 14 * spark));
    scatter(b, i, Math.max(0, f.strength * lies * (0.13 + 0.05 * fold + 0.14 * spark)));
    roughen(b, i, 0.2, Math.min(1, 1.2 * f.strength * lies));
  });
};
