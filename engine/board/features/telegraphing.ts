import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise } from '../field.ts';
import { blot } from '../mask.ts';
import { between, ease, random, rough } from '../noise.ts';
import type { Point } from '../stamp.ts';

/** Relief of what lies below, rounded by the film; color and sheen stay even. */
export const telegraphing = (b: Board, f: FeatureOf<'telegraphing'>, from: number): void => {
  const next = random(from);
  const size = f['size-mm'];
  const um = f['height-um'];
  const faults = Array.from({ length: f.fault === 'chips' ? 4 : 5 }, (_, n) => {
    const aside: Point = [between(next, 0.05, 0.95) * b.widthMm, between(next, 0.08, 0.92) * b.heightMm];
    const center: Point = n === 0 ? [b.widthMm * 0.5, b.heightMm * 0.48] : aside;
    const radius = (size / 2) * (n === 0 ? 1.1 : between(next, 0.25, 0.85));
    return { center, radius, edge: blot(center, radius, from + n, 0.8, 1.3, 40) };
  });
  const shape = (x: number, y: number): number => {
    let sum = 0;
    if (f.fault === 'joint') {
      const d = y - b.heightMm * 0.5 - 0.05 * (x - b.widthMm / 2);
      return -um * Math.exp(-((d / 0.7) ** 2)) - um * 0.5 * ease(-0.4, 0.4, d);
    }
    if (f.fault === 'ring') {
      const d = Math.hypot(x - b.widthMm * 0.48, y - b.heightMm * 0.5) - size;
      return um * Math.exp(-((d / 1.1) ** 2)) - um * 0.4 * (1 - ease(-0.6, 0.6, d));
    }
    for (const { center, radius, edge } of faults) {
      if (f.fault === 'chips') sum -= um * (1 - ease(-0.85, 0.85, edge(x, y)));
      else sum -= um * 1.6 * Math.exp(-(((x - center[0]) ** 2 + (y - center[1]) ** 2) / (radius * 0.6) ** 2));
    }
    return Math.max(-um * 1.6, sum);
  };
  everywhere(b, (i, x, y) => {
    raise(b, i, shape(x, y) + 0.6 * rough(x / 4, y / 4, from + 9, 2));
  });
};
