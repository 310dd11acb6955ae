import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { turned } from '../mask.ts';
import { between, noise, random } from '../noise.ts';
import { places } from '../places.ts';
import { radians, stroke, wander } from '../stamp.ts';

/** Swollen fibers: sharp ridges along the grain, and single whiskers that stand. */
export const raisedGrain = (b: Board, f: FeatureOf<'raised-grain'>, from: number): void => {
  const { along, across } = turned(f.angle);
  everywhere(b, (i, x, y) => {
    const u = along(x, y);
    const v = across(x, y) + 1.5 * noise(u / 40, across(x, y) / 15, from + 2);
    const ridge = 1 - Math.abs(noise(u / 9, v / 0.75, from));
    const fuzz = Math.max(0, noise(u / 1.8, v / 0.32, from + 1));
    raise(b, i, f['height-um'] * (0.24 * ridge ** 3 + 0.2 * fuzz));
    roughen(b, i, 0.2, 0.8);
    scatter(b, i, 0.018 * fuzz);
  });
  const next = random(from);
  for (const point of places(b, next, 9)) {
    const line = wander(
      next,
      point,
      radians(f.angle + between(next, -16, 16)),
      between(next, 0.4, 1.8),
      0.8,
      0.25,
    );
    stroke(b, line, 0.09, (i, d) => {
      raise(b, i, f['height-um'] * 0.55 * Math.max(0, 1 - d / 0.13));
    });
  }
};
