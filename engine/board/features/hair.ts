import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, tint } from '../field.ts';
import { between, random } from '../noise.ts';
import { cover, placed, stroke, wander } from '../stamp.ts';
import { BODY_COLOR } from './body-color.ts';

/** A thread in the film, which climbs up to it on both sides. */
export const hair = (b: Board, f: FeatureOf<'hair'>, from: number): void => {
  const next = random(from);
  const half = f['thickness-um'] / 2000;
  const color = BODY_COLOR[f.color];
  for (let n = 0; n < f.count; n++) {
    const heading = between(next, -0.5, 0.9);
    const [x, y] = n === 0 ? placed(b, next, f.at) : [next() * b.widthMm, next() * b.heightMm];
    const length = f['length-mm'] * (n === 0 ? 1 : between(next, 0.4, 1));
    const path = wander(next, [0, 0], heading, length, f.curl * 1.5, 0.4);
    const [mx, my] = path[Math.floor(path.length / 2)]!;
    const line = path.map(([px, py]) => [px + x - mx, py + y - my] as const);
    stroke(b, line, Math.max(1.2, half * 8), (i, d) => {
      const inside = d < half ? Math.sqrt(1 - (d / half) ** 2) : 0;
      const share = Math.max(0, cover(b, half - d, half * 2));
      const meniscus = 0.2 * Math.exp(-((d / 0.42) ** 1.4));
      raise(b, i, f['thickness-um'] * (0.3 * Math.max(inside, share) + meniscus));
      tint(b, i, color, Math.min(1, share * 1.5));
    });
  }
};
