import type { FeatureOf } from '../../model/board.ts';
import { type Board, scatter } from '../field.ts';
import { between, random } from '../noise.ts';
import { places } from '../places.ts';
import { disc, type Point, stroke } from '../stamp.ts';

/** Star-like specks: a white core with short rays. */
export const specks = (b: Board, f: FeatureOf<'specks'>, from: number): void => {
  const next = random(from);
  for (const [x, y] of places(b, next, f['per-cm2'])) {
    const radius = between(next, 0.4, 0.75, 1.5) * f['diameter-mm'];
    const add = (i: number, share: number) => {
      scatter(b, i, 0.9 * f.strength * share);
    };
    disc(b, [x, y], radius * 0.6, (i, d) => add(i, Math.max(0, 1 - d / (radius * 0.6))));
    const rays = 5 + Math.floor(next() * 4);
    for (let n = 0; n < rays; n++) {
      const heading = (n + 0.6 * next()) * ((2 * Math.PI) / rays);
      const length = radius * between(next, 0.7, 1.6);
      const tip: Point = [x + Math.cos(heading) * length, y + Math.sin(heading) * length];
      stroke(b, [[x, y], tip], 0.1, (i, d, run) =>
        add(i, 0.8 * Math.max(0, 1 - run / length) * Math.max(0, 1 - d / 0.16)),
      );
    }
  }
};
