import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, roughen, stain } from '../field.ts';
import { between, ease, noise, random } from '../noise.ts';
import { stroke, trickle } from '../stamp.ts';

const TAN = [0.1, 0.3, 0.72] as const;

/** Leached soap: thin glossy runs down an upright face, pale as weak tea, drawn out above and swelling into a drop. */
export const soapyStreaks = (b: Board, f: FeatureOf<'soapy-streaks'>, from: number): void => {
  const next = random(from);
  for (let n = 0; n < f.count; n++) {
    const x = ((n + between(next, 0.05, 0.95)) / f.count) * b.widthMm;
    const length = between(next, 0.25, 0.95, 0.8) * b.heightMm;
    const half = (f['width-mm'] / 2) * between(next, 0.5, 1.3);
    const line = trickle(next, [x, between(next, -0.25, 0.3) * b.heightMm], length, half * 0.7);
    const drop = half * between(next, 2.4, 4.5);
    stroke(b, line, half * 1.5, (i, d, run) => {
      const bead = ease(length - drop, length - half * 0.9, run);
      const wide = half * (0.5 + 0.5 * bead + 0.16 * noise(run / 6, n, from));
      const share = (1 - ease(wide * 0.45, wide, d)) * ease(0, length * 0.45, run);
      if (share === 0) return;
      const rim = Math.exp(-(((d - wide * 0.72) / (wide * 0.2)) ** 2)) * share;
      const patchy = 0.75 + 0.4 * noise(run / 4, d, from + n);
      stain(b, i, TAN, f.strength * (share * (0.3 + 0.55 * bead) * patchy + 0.3 * rim));
      roughen(b, i, 0.008, Math.min(1, share * 1.6));
      raise(b, i, (3 + 22 * bead) * share * (1 - (d / wide) ** 2 * 0.6));
    });
  }
};
