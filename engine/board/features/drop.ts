import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, pour, raise, roughen, stain } from '../field.ts';
import { blot } from '../mask.ts';
import { between, ease, random } from '../noise.ts';
import { disc, type Point, placed } from '../stamp.ts';

const WETTED = [0.62, 0.7, 0.8] as const;

/** The test drop: it stands as a lens on a sound film, and soaks into a bare or worn place. */
export const drop = (b: Board, f: FeatureOf<'drop'>, from: number): void => {
  const next = random(from);
  const center = placed(b, next, f.at);
  for (let n = 0; n < 5; n++) {
    const radius = (f['diameter-mm'] / 2) * (n === 0 ? 1 : between(next, 0.2, 0.5));
    const away = f['diameter-mm'] * between(next, 0.9, 1.5);
    const heading = next() * 6.28;
    const place: Point =
      n === 0 ? center : [center[0] + Math.cos(heading) * away, center[1] + Math.sin(heading) * away];
    if (f.soaks) {
      const edge = blot(place, radius, from + n, 0.2);
      everywhere(b, (i, x, y) => {
        const share = 1 - ease(-radius * 0.2, radius * 0.14, edge(x, y));
        if (share > 0) stain(b, i, WETTED, share);
      });
      continue;
    }
    disc(b, place, radius * 1.15, (i, d) => {
      const t = d / radius;
      stain(b, i, WETTED, 0.4 * Math.exp(-(((t - 0.96) / 0.09) ** 2)));
      if (t >= 1) return;
      raise(b, i, radius * 480 * (1 - t * t) ** 0.62);
      pour(b, i, radius * 480 * (1 - t * t));
      roughen(b, i, 0.004, 1);
    });
  }
};
