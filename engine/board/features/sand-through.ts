import type { FeatureOf } from '../../model/board.ts';
import { groundBelow } from '../base.ts';
import { lowerEdge } from '../bench.ts';
import { type Board, everywhere, raise, roughen, scaleFilm, tint, uncover } from '../field.ts';
import { blot } from '../mask.ts';
import { ease, noise, random, rough } from '../noise.ts';
import { placed } from '../stamp.ts';

/** Thinned paint looks chalky. */
const CHALKY = [0.5, 0.49, 0.47] as const;
const PORE_UM = -5;

/** Through the film (a dull halo), through the paint (its thinned rim), down to what lies below; the paper's lines cross it all. */
export const sandThrough = (b: Board, f: FeatureOf<'sand-through'>, from: number): void => {
  const radius = f['diameter-mm'] / 2;
  const edge = blot(placed(b, random(from), f.at), radius * 0.72, from, 0.35, 1.6, -8);
  const ground = groundBelow(b, f.under === 'wood' ? { wood: 'oak' } : { paint: f.under }, from);
  const border = f.on === 'edge' ? lowerEdge(b) : b.heightMm;
  const onEdge = (x: number, y: number) =>
    border - y - 0.16 * f['diameter-mm'] * (1 + 1.1 * noise(x / 13, 2, from) + 0.5 * noise(x / 4, 5, from));
  everywhere(b, (i, x, y) => {
    if (y > border) return;
    const v = y + 0.07 * x;
    const paper = noise(x / 8, v / 0.28, from + 3) + 0.5 * noise(x / 4, v / 0.16, from + 4);
    const d =
      (f.on === 'edge' ? onEdge(x, y) : edge(x, y)) +
      0.28 * paper +
      0.6 * rough(x / 2.5, y / 2.5, from + 8, 3);
    if (d > radius * 0.85) return;
    // One side is feathered wider: the block came from there.
    const lean = 1 + 0.45 * noise(x / 14, y / 14, from + 6);
    const bare = 1 - ease(-0.13 * radius * lean, 0.03 * radius, d);
    const halo = 1 - ease(radius * 0.1, radius * 0.5 * lean, d);
    const pore = ground.height[i]! < PORE_UM ? 0.5 : 1;
    tint(b, i, CHALKY, 0.2 * halo * (1 + 0.5 * paper) * (1 - bare));
    uncover(b, i, ground, bare * pore);
    scaleFilm(b, i, 1 - halo);
    raise(b, i, bare * 0.6 * ground.height[i]! - 30 * halo - 25 * bare + 1.8 * paper * halo);
    roughen(b, i, 0.24, halo);
  });
};
