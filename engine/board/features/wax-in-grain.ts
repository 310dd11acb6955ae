import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, roughen, tint } from '../field.ts';
import { between, random } from '../noise.ts';
import { places } from '../places.ts';
import { cover, radians, stroke, wander } from '../stamp.ts';

const WAX = [0.72, 0.69, 0.62] as const;

/** Wax dried pale in the pores: short dashes along the grain, standing slightly proud. */
export const waxInGrain = (b: Board, f: FeatureOf<'wax-in-grain'>, from: number): void => {
  const next = random(from);
  for (const point of places(b, next, f['per-cm2'], 'pores')) {
    const length = f['length-mm'] * between(next, 0.25, 1.2, 1.4);
    const half = between(next, 0.05, 0.13);
    const fill = between(next, 0.35, 1) * f.strength;
    const line = wander(next, point, radians(f.angle), length, 0.12, 0.4);
    stroke(b, line, half + b.pitch, (i, d, run) => {
      const taper = Math.min(1, (4 * Math.min(run, length - run)) / length + 0.15);
      const share = cover(b, half * taper - d, half * 2) * fill;
      tint(b, i, WAX, Math.max(0, share));
      raise(b, i, 14 * share);
      roughen(b, i, 0.26, share);
    });
  }
};
