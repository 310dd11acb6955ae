import type { FeatureOf } from '../../model/board.ts';
import { PAINT, type Rgb, WOOD } from '../base.ts';
import { lowerEdge } from '../bench.ts';
import { type Board, everywhere, raise, roughen, scaleFilm, tint } from '../field.ts';
import { blot } from '../mask.ts';
import { ease, noise, random } from '../noise.ts';
import { placed } from '../stamp.ts';

/** Through the film (a dull halo), through the paint (its thinned rim), down to what lies below. */
export const sandThrough = (b: Board, f: FeatureOf<'sand-through'>, from: number): void => {
  const radius = f['diameter-mm'] / 2;
  const edge = blot(placed(b, random(from), f.at), radius * 0.72, from, 0.35, 1.5);
  const core: Rgb = f.under === 'white' ? PAINT.white : f.under === 'gray' ? PAINT.gray : WOOD.oak.early;
  const border = f.on === 'edge' ? lowerEdge(b) : b.heightMm;
  const onEdge = (x: number, y: number) =>
    border - y - 0.16 * f['diameter-mm'] * (1 + 1.1 * noise(x / 13, 2, from) + 0.5 * noise(x / 4, 5, from));
  everywhere(b, (i, x, y) => {
    if (y > border) return;
    const scratch = noise(x / 14, y / 0.3, from + 3);
    const d =
      (f.on === 'edge' ? onEdge(x, y) : edge(x, y)) +
      0.35 * scratch +
      0.3 * noise(x / 1.6, y / 1.6, from + 8);
    if (d > radius * 0.8) return;
    const bare = 1 - ease(-0.5, 0.35, d);
    const halo = 1 - ease(radius * 0.16, radius * 0.4, d);
    const grain = 0.86 + 0.2 * noise(x / 9, y / 0.5, from + 9);
    tint(b, i, [core[0] * grain, core[1] * grain, core[2] * grain], bare);
    if (bare < 0.5 && halo > 0) tint(b, i, [0.55, 0.53, 0.5], 0.22 * halo);
    scaleFilm(b, i, 1 - halo);
    raise(b, i, -30 * halo - 35 * bare + 1.6 * scratch * halo);
    roughen(b, i, 0.24, halo);
  });
};
