import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, roughen, stain } from '../field.ts';
import { between, ease, noise, random } from '../noise.ts';
import { stroke, trickle } from '../stamp.ts';

const TAN = [0.22, 0.55, 1.15] as const;

/** Leached soap: glossy tan runs down an upright face, ending in a drop. */
export const soapyStreaks = (b: Board, f: FeatureOf<'soapy-streaks'>, from: number): void => {
  const next = random(from);
  for (let n = 0; n < f.count; n++) {
    const x = ((n + between(next, 0.15, 0.85)) / f.count) * b.widthMm;
    const length = between(next, 0.35, 0.95) * b.heightMm;
    const half = (f['width-mm'] / 2) * between(next, 0.5, 1.2);
    const line = trickle(next, [x, between(next, -0.15, 0.2) * b.heightMm], length, half * 0.5);
    stroke(b, line, half * 1.6, (i, d, run) => {
      const wide = half * (0.8 + 0.4 * noise(run / 5, n, from)) * (run > length - half * 2 ? 1.25 : 1);
      const share = (1 - ease(wide * 0.7, wide * 1.05, d)) * ease(0, length * 0.2, run);
      const rim = Math.exp(-(((d - wide * 0.85) / (wide * 0.2)) ** 2)) * ease(0, length * 0.2, run);
      stain(b, i, TAN, f.strength * (0.45 * share + 0.5 * rim));
      roughen(b, i, 0.008, share);
      raise(b, i, 4 * share + 3 * rim);
    });
  }
};
