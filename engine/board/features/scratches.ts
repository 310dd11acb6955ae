import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, roughen, scatter } from '../field.ts';
import { between, random } from '../noise.ts';
import { cover, type Point, radians, stroke, wander } from '../stamp.ts';

/** Grooves: pale because their torn walls scatter, deep about a sixth of their width. */
export const scratches = (b: Board, f: FeatureOf<'scratches'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['length-mm'];
  const count = Math.max(2, Math.round((f['per-cm2'] * b.widthMm * b.heightMm) / 100));
  const groove = (points: readonly Point[], width: number, weight: number, length: number) =>
    stroke(b, points, width / 2 + b.pitch, (i, d, run) => {
      const ends = Math.max(0.05, Math.min(1, (6 * Math.min(run, length - run)) / length));
      const share = Math.max(0, cover(b, width / 2 - d, width)) * weight * ends;
      raise(b, i, -width * 1000 * 0.45 * share);
      scatter(b, i, 1.1 * f.strength * share);
      roughen(b, i, 0.22, 0.7 * share);
    });
  for (let n = 0; n < count; n++) {
    const from0: Point = [between(next, -0.1, 1) * b.widthMm, between(next, -0.05, 1.05) * b.heightMm];
    const width = Math.max(0.45 * b.pitch, (f['width-um'] / 1000) * between(next, 0.5, 1.25));
    const weight = f.pattern === 'swirls' ? between(next, 0.55, 1.2) : between(next, 0.25, 1, 1.5);
    if (f.pattern === 'swirls') {
      const radius = between(next, low, Math.max(low, Math.min(high, 10))) / 2;
      const turn = next() * 6.28;
      const sweep = between(next, 2.4, 6.8);
      const points: Point[] = [];
      for (let t = 0; t <= 1.0001; t += 0.04) {
        const a = turn + t * sweep;
        const r = radius * (1 - 0.25 * t);
        points.push([from0[0] + Math.cos(a) * r + t * radius * 0.7, from0[1] + Math.sin(a) * r]);
      }
      groove(points, width, weight, radius * sweep * 0.88);
    } else {
      const length = between(next, low, high, f.pattern === 'use' ? 2 : 1);
      const heading = f.pattern === 'use' ? next() * Math.PI : radians(f.angle) + between(next, -0.05, 0.05);
      groove(
        wander(next, from0, heading, length, f.pattern === 'use' ? 0.12 : 0.01, 1),
        width,
        weight,
        length,
      );
    }
  }
};
