import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, tint } from '../field.ts';
import { between, random } from '../noise.ts';
import { places } from '../places.ts';
import { cover, radians, stroke, wander } from '../stamp.ts';
import { BODY_COLOR } from './body-color.ts';

/** Lint shed by a cloth or roller: short, curled, all of one color. */
export const fibers = (b: Board, f: FeatureOf<'fibers'>, from: number): void => {
  const next = random(from);
  const half = f['thickness-um'] / 2000;
  const color = BODY_COLOR[f.color];
  for (const [x, y] of places(b, next, f['per-cm2'], 'strokes')) {
    const point = [x + between(next, -3, 3), y + between(next, -5, 5)] as const;
    const length = between(next, f['length-mm'][0], f['length-mm'][1]);
    const line = wander(next, point, radians(f.angle) + between(next, -0.7, 0.7), length, 4.5, 0.2);
    stroke(b, line, 0.4, (i, d) => {
      const share = Math.max(0, cover(b, half - d, half * 2));
      tint(b, i, color, Math.min(1, share * 1.6));
      raise(b, i, f['thickness-um'] * (0.55 * share + 0.22 * Math.exp(-((d / 0.3) ** 1.5))));
    });
  }
};
