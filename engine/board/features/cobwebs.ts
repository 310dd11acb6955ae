import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, roughen, tint } from '../field.ts';
import { between, random } from '../noise.ts';
import { cover, stroke, wander } from '../stamp.ts';

const THREAD = [0.62, 0.61, 0.58] as const;

/** Finish that dried in the air to threads and lies across the surface. */
export const cobwebs = (b: Board, f: FeatureOf<'cobwebs'>, from: number): void => {
  const next = random(from);
  for (let n = 0; n < f.count; n++) {
    const half = (f['thickness-um'] / 2000) * between(next, 0.5, 1.3);
    const length = between(next, 0.25, 1.2) * b.widthMm;
    const line = wander(
      next,
      [between(next, -0.1, 0.8) * b.widthMm, next() * b.heightMm],
      between(next, -0.9, 0.9),
      length,
      between(next, 0.08, 0.5),
      0.7,
    );
    stroke(b, line, half + 0.25, (i, d) => {
      const share = Math.max(0, cover(b, half - d, half * 2));
      tint(b, i, THREAD, Math.min(1, share * 1.1));
      raise(b, i, half * 2000 * (share + 0.15 * Math.exp(-d / 0.12)));
      roughen(b, i, 0.12, share);
    });
  }
};
