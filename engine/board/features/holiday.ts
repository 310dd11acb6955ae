import type { FeatureOf } from '../../model/board.ts';
import { type Board, dim, everywhere, raise, roughen, scatter } from '../field.ts';
import { remnant, stray } from '../mask.ts';
import { drawnOut, ease, noise, random, rough } from '../noise.ts';
import { placed, radians } from '../stamp.ts';
import { fiberAt } from '../wood/face.ts';

/** Bristles skip and carry each by itself: reaches across the stroke at three widths, long-tailed. */
const strand = (v: number, seed: number): number => {
  const fine = noise(2.5, v / 0.6, seed);
  return (
    0.95 * noise(5.5, v / 4.2, seed + 1) + 0.4 * noise(8.5, v / 1.6, seed + 2) + 0.9 * fine * fine * fine
  );
};

/** Wood is rougher than this where no film lies, and paint is not. */
const WOOD_ROUGHNESS = 0.3;

/**
 * A place the brush never met: the last bristles of one stroke run out into it in thin tails, the next stroke took up
 * again a little late.
 */
export const holiday = (b: Board, f: FeatureOf<'holiday'>, from: number): void => {
  const [cx, cy] = placed(b, random(from), f.at);
  const turn = radians(f.angle - 3);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const half = f['length-mm'] / 2;
  const wide = f['width-mm'] / 2;
  // A hungry brush skips more than once: a lesser miss lies beside the large one.
  const skips = [
    { u: 0, v: 0, half, wide, id: from },
    { u: half * 0.5, v: wide * 1.5, half: half * 0.42, wide: wide * 0.22, id: from + 20 },
    { u: -half * 0.75, v: -wide * 1.3, half: half * 0.2, wide: wide * 0.12, id: from + 40 },
  ];
  const fibrous = b.bareRoughness > WOOD_ROUGHNESS ? 1 : 0.2;
  everywhere(b, (i, x, y) => {
    const u0 = (x - cx) * c + (y - cy) * s;
    const v0 = -(x - cx) * s + (y - cy) * c;
    if (Math.abs(u0) > half * 2 || Math.abs(v0) > wide * 2.4) return;
    let missed = 0;
    let edge = 9;
    for (const skip of skips) {
      const u = u0 - skip.u;
      const v = v0 - skip.v - 0.4 * noise(u0 / 17, 4, skip.id);
      if (Math.abs(u) > skip.half * 1.7 || Math.abs(v) > skip.wide * 1.6 + 1) continue;
      const t = Math.min(1, Math.abs(v) / skip.wide);
      const belly = Math.sqrt(Math.max(0, 1 - t ** 2.4));
      // Left the stroke ends: paint runs dry bristle by bristle. Right the next one lands: short and blunt.
      const dry =
        u + skip.half * (0.95 * belly - 0.3) + skip.half * 0.42 * strand(v, skip.id) + 0.2 * skip.half;
      const lands = skip.half * (0.7 * belly + 0.08) + 3.6 * strand(v, skip.id + 7) - u;
      const side = skip.wide * (1 + 0.14 * stray(u, 3, 9, skip.id + 3)) - Math.abs(v);
      // Wet, the film crept on a little along the fibers and rounded off.
      const crept =
        0.35 * drawnOut(u0, v0, 2.2, 0.4, skip.id + 9) + 0.8 * rough(u0 / 3.4, v0 / 2.4, skip.id + 10, 3);
      const open =
        ease(-0.2, 4.6, dry + 1.4 * crept) *
        ease(-0.2, 1.3, lands + 1.2 * crept) *
        ease(-0.2, 0.8, side + 0.6 * crept);
      missed = Math.max(missed, open);
      edge = Math.min(edge, Math.abs(lands), Math.abs(side));
    }
    if (missed === 0 && edge > 2) return;
    // Here and there a dry bristle still wiped a breath of film over it.
    const wiped =
      0.75 * ease(0.35, 0.95, noise(u0 / 26, v0 / 0.55, from + 6) + 0.4 * noise(u0 / 9, v0 / 2.2, from + 7));
    const bare = missed * (1 - wiped);
    const film = b.film[i]!;
    const pore = ease(-2, -7, b.height[i]!) * bare;
    const rim = Math.exp(-((edge / 0.6) ** 2)) * (1 - missed) * (0.25 + remnant(x, y, 5, from + 8));
    // Bare wood has fibers; bare paint is smooth.
    const fiber = fibrous * fiberAt(x, y, from + 9);
    raise(b, i, -(film * 0.8 + 14) * bare + 5 * rim + 9 * fiber * bare);
    b.film[i] = film * (1 - bare);
    roughen(b, i, b.bareRoughness, bare);
    // Dry fibers scatter: paler than what the film wets.
    scatter(b, i, bare * Math.max(0, 0.05 + 0.04 * fiber + 0.025 * rough(x / 4, y / 3, from + 10, 2)));
    // Bare, it is handled and dusty in places, and its pores stand open.
    const soiled = bare * Math.max(0, 0.12 + 0.2 * rough(x / 7, y / 3, from + 11, 2)) + 0.4 * pore;
    dim(b, i, [1 - soiled, 1 - soiled, 1 - 1.05 * soiled]);
  });
};
