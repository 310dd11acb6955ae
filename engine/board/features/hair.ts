import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, tint } from '../field.ts';
import { between, ease, noise, random } from '../noise.ts';
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
    const id = Math.floor(next() * 1e6);
    stroke(b, line, Math.max(1.5, half * 8), (i, d, run) => {
      // Its root is thick; its tip runs out and stands free of the film.
      const thick = half * (1 - 0.6 * ease(0.35, 1, run / length)) * (1 + 0.2 * noise(run / 1.4, 2, id));
      const inside = d < thick ? Math.sqrt(1 - (d / thick) ** 2) : 0;
      const share = Math.max(0, cover(b, thick - d, thick * 2));
      // It comes out of the film here and dips under it there.
      const up = 0.6 + 0.4 * ease(-0.35, 0.35, noise(run / 3.2, 5, id));
      const along = run / length;
      const meniscus = (0.23 + 0.14 * up) * (1 - 0.6 * ease(0.6, 1, along)) * Math.exp(-((d / 0.4) ** 1.4));
      raise(b, i, f['thickness-um'] * (0.3 * up * Math.max(inside, share) + meniscus));
      tint(b, i, color, Math.min(1, (0.6 + 0.4 * up) * share * 1.6));
    });
  }
};
