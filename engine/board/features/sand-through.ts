import type { FeatureOf } from '../../model/board.ts';
import { groundBelow } from '../base.ts';
import { lowerEdge } from '../bench.ts';
import { type Board, dim, everywhere, raise, roughen, scaleFilm, tint, uncover } from '../field.ts';
import { blot, remnant, stray } from '../mask.ts';
import { drawnOut, ease, noise, random, rough } from '../noise.ts';
import { placed } from '../stamp.ts';
import { fiberAt } from '../wood/face.ts';

/** Thinned paint looks chalky. */
const CHALKY = [0.5, 0.49, 0.47] as const;
/** Wood dust and paint dust together, linear light. */
const DUST = [0.4, 0.34, 0.27] as const;
const PORE_UM = -5;

/**
 * Through the film coat by coat (thin contours), through the paint, which stays in the low places, down to what lies
 * below.
 */
export const sandThrough = (b: Board, f: FeatureOf<'sand-through'>, from: number): void => {
  const radius = f['diameter-mm'] / 2;
  const edge = blot(placed(b, random(from), f.at), radius * 0.72, from, 0.6, 1.5, -8);
  const ground = groundBelow(b, f.under === 'wood' ? { wood: 'oak' } : { paint: f.under }, from);
  const border = f.on === 'edge' ? lowerEdge(b) : b.heightMm;
  const onEdge = (x: number, y: number) =>
    border - y - 0.16 * f['diameter-mm'] * (1 + 1.1 * noise(x / 13, 2, from) + 0.5 * noise(x / 4, 5, from));
  everywhere(b, (i, x, y) => {
    if (y > border) return;
    // The lines of the paper, one way and, weaker, another.
    const paper =
      drawnOut(x - 0.34 * y, y + 0.34 * x, 6, 0.24, from + 3) +
      0.5 * drawnOut(x, y - 0.5 * x, 5, 0.22, from + 4);
    const outline = f.on === 'edge' ? onEdge(x, y) : edge(x, y);
    if (outline > radius * 1.1) return;
    // The face was never flat: high places go first, paint stays in the low ones.
    const low = stray(x, y * 1.3, radius * 0.5, from + 8) + 0.16 * rough(x / 1.6, y / 1.3, from + 9, 2);
    const near = Math.exp(-((outline / (radius * 0.45)) ** 2));
    const d = outline + radius * 0.14 * low * (0.35 + near) + 0.3 * paper;
    const lean = 1 + 0.6 * noise(x / 15, y / 15, from + 6);
    const open = ease(PORE_UM + 3, PORE_UM - 4, ground.height[i]!);
    const pore =
      open * (0.25 + 0.6 * ease(-radius * 0.9, -radius * 0.3, d + 2 * noise(x / 4, y / 3, from + 32)));
    const gone = 1 - ease(-0.16 * radius * lean, 0.08 * radius, d + 0.5 * paper);
    const bare = gone * (1 - pore);
    const fiber = f.under === 'wood' && gone > 0 ? fiberAt(x, y, from + 30) : 0;
    const halo = 1 - ease(radius * 0.14, radius * 0.55 * lean, d);
    const thin = 1 - ease(0, radius * 0.3 * lean, d);
    tint(b, i, CHALKY, (0.08 * halo + 0.1 * thin) * (1 + 0.4 * paper) * (1 - bare));
    uncover(b, i, ground, Math.min(1, bare + 0.12 * thin * (1 - bare) * ease(-0.2, 0.8, paper)));
    // Dust of the paint is rubbed into the fibers.
    const dusty =
      0.34 + 0.12 * paper + 0.14 * noise(x / 5, y / 4, from + 31) + 0.2 * ease(-radius * 0.8, 0, d);
    tint(b, i, DUST, bare * Math.max(0, dusty));
    // What the paper left open is dark with dust; the soft wood was cut deeper than the hard.
    const shade =
      (1 - 0.44 * bare) *
      (1 + bare * (0.26 * fiber + 0.1 * paper + 0.22 * noise(x / 9, y / 2.2, from + 33) - 0.3 * open));
    dim(b, i, [shade, shade, shade]);
    scaleFilm(b, i, 1 - halo);
    // Where one coat ends, a hair-thin line with another shine beside it.
    for (let coat = 0; coat < 3; coat++) {
      const at = d - radius * (0.2 + 0.15 * coat) * lean;
      const line = Math.exp(-((at / 0.16) ** 2)) * remnant(x, y, 8, from + 20 + coat);
      raise(b, i, 1.5 * line - 3 * ease(0.3, -0.3, at));
      tint(b, i, CHALKY, 0.09 * line * (1 - bare));
      roughen(b, i, coat & 1 ? 0.09 : 0.16, 0.6 * ease(0.4, -0.4, at));
    }
    raise(
      b,
      i,
      bare * (0.8 * ground.height[i]! + 11 * fiber) - 14 * gone + (1.3 + 2.2 * gone) * paper * halo,
    );
    roughen(b, i, 0.25, 0.8 * halo * thin + 0.2 * bare);
  });
};
