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
    const curl = next() < 0.3 ? between(next, 0.1, 0.8) : between(next, 1, 9, 1.4);
    const line = wander(next, point, radians(f.angle) + between(next, -1.3, 1.3), length, curl, 0.2);
    // Torn, it has a kink.
    if (next() < 0.3)
      line.push(
        ...wander(next, line[line.length - 1]!, next() * 6.28, length * between(next, 0.1, 0.5), curl, 0.2),
      );
    const thick = half * between(next, 0.6, 1.5, 1.3);
    const id = Math.floor(next() * 1e6);
    const fast = between(next, 0.25, 0.9);
    stroke(b, line, 0.45, (i, d, run) => {
      // One end is fast in the coat, drowned and soft; toward the other it comes free.
      const t = Math.min(1, run / length);
      const free = ease(fast - 0.45, fast + 0.2, t);
      const up = (0.7 + 0.3 * free) * (0.5 + 0.5 * ease(-0.5, 0.3, noise(run / 1.6, 3, id)));
      const wide = thick * (0.75 + 0.5 * noise(run / 0.9, 6, id)) * (1 - 0.55 * t);
      const share = up * Math.max(0, cover(b, wide - d, wide * 2));
      tint(b, i, color, Math.min(1, share * 2.6));
      // The film climbs it where it is fast, and leaves it where it stands free.
      raise(
        b,
        i,
        f['thickness-um'] * (0.75 * share + 0.22 * up * (1 - 0.7 * free) * Math.exp(-((d / 0.3) ** 1.5))),
      );
    });
  }
};
