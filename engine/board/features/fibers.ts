import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, tint } from '../field.ts';
import { between, ease, noise, random } from '../noise.ts';
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
    // Some are whole and curled, many only bits; each dips in and out of the coat on its way.
    const length = between(next, f['length-mm'][0] * 0.5, f['length-mm'][1] * 1.15, 1.5);
    const curl = between(next, 1, 8);
    const line = wander(next, point, radians(f.angle) + between(next, -1.1, 1.1), length, curl, 0.2);
    const thick = half * between(next, 0.6, 1.15);
    const id = Math.floor(next() * 1e6);
    stroke(b, line, 0.4, (i, d, run) => {
      const up = 0.35 + 0.65 * ease(-0.5, 0.3, noise(run / 1.6, 3, id));
      const share = up * Math.max(0, cover(b, thick - d, thick * 2));
      tint(b, i, color, Math.min(1, share * 1.6));
      raise(b, i, f['thickness-um'] * (0.55 * share + 0.22 * up * Math.exp(-((d / 0.3) ** 1.5))));
    });
  }
};
