import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, roughen, scatter, stain } from '../field.ts';
import { blot, joined, remnant, settled } from '../mask.ts';
import { between, ease, noise, random, rough } from '../noise.ts';
import { type Point, placed } from '../stamp.ts';

type WhiteRing = FeatureOf<'white-ring'>;
/** No foot of a glass is smaller in radius, mm. */
const GLASS_MM = 15;
const BLACK_STAIN = [1.6, 1.5, 1.35] as const;

/** The foot of a wet glass, set down and pushed on: one ring, fainter on one side, and part of a second. */
const rings = (
  b: Board,
  f: WhiteRing,
  from: number,
  [cx, cy]: Point,
  mark: (i: number, share: number) => void,
) => {
  const next = random(from + 1);
  const half = f['width-mm'] / 2;
  const radius = f['diameter-mm'] / 2 - half;
  const aside = radius * between(next, 0.3, 0.5) * (next() < 0.5 ? -1 : 1);
  const feet = [{ x: cx, y: cy, weight: 1, open: next() * 6.28, gap: 0.55 }];
  // A glass is lifted and set down again; a nail is not.
  if (radius > GLASS_MM)
    feet.push({ x: cx + aside, y: cy + 0.3 * aside, weight: 0.6, open: aside > 0 ? Math.PI : 0, gap: 1.5 });
  everywhere(b, (i, x, y) => {
    let share = 0;
    for (const foot of feet) {
      const off = Math.hypot(x - foot.x, y - foot.y) - radius;
      if (Math.abs(off) > half * 4) continue;
      const angle = Math.atan2(y - foot.y, x - foot.x);
      const [ca, sa] = [Math.cos(angle), Math.sin(angle)];
      const wet =
        ease(-0.75, 0.5, noise(ca * 1.6 + foot.weight * 5, sa * 1.6, from)) *
        (0.5 + 0.6 * Math.max(0, noise(ca * 5, sa * 5, from + 3) + 0.6));
      const away = Math.abs(Math.atan2(Math.sin(angle - foot.open), Math.cos(angle - foot.open)));
      const here = foot.weight * wet * ease(foot.gap * 0.5, foot.gap * 1.6, away);
      // Water crept away under the foot and along the grain beside it, here more, there less.
      const crept = 0.7 * noise(x / 4, y / 2.6, from + 5) + 0.3 * noise(x / 1.4, y / 0.9, from + 6);
      const wobble = half * (0.6 * rough(x / 5, y / 5, from + 2, 2) + 0.28 * crept);
      const wide = off + wobble > 0 ? 0.75 + 0.5 * crept : 0.8 + 0.8 * wet;
      const body = Math.exp(-((Math.abs(off + wobble) / (half * Math.max(0.3, wide))) ** 1.5));
      const tide =
        Math.exp(-(((off - half * 0.75 + wobble) / (half * (0.16 + 0.2 * wet))) ** 2)) *
        remnant(x, y, 5, from + 9);
      share = Math.max(share, here * (0.75 * body + 0.4 * tide) * settled(x, y, from + 12));
    }
    if (share > 0.004) mark(i, share);
  });
};

/**
 * Splashed drops, run together where they met: part of a rim where each dried last, dull inside and clearer toward the
 * middle.
 */
const drops = (
  b: Board,
  f: WhiteRing,
  from: number,
  center: Point,
  mark: (i: number, share: number) => void,
) => {
  const next = random(from);
  const half = f['width-mm'] / 2;
  const spots = Array.from({ length: 17 }, (_, n) => {
    const radius = (f['diameter-mm'] / 2) * (n === 0 ? 1 : between(next, 0.06, 0.8, 2.6));
    const at: Point = n === 0 ? center : [next() * b.widthMm, next() * b.heightMm];
    const edge = blot(at, radius, from + n, 0.13, between(next, 1, 1.25), next() * 180);
    return { at, radius, edge, weight: n === 0 ? 1 : between(next, 0.35, 1) };
  });
  everywhere(b, (i, x, y) => {
    let d = 1e9;
    let size = 1;
    let weight = 1;
    for (const spot of spots) {
      const { at, radius } = spot;
      if (Math.abs(x - at[0]) > radius * 2 + 2 || Math.abs(y - at[1]) > radius * 2 + 2) continue;
      const here = spot.edge(x, y);
      if (here < d) [size, weight] = [radius, spot.weight];
      d = joined(d, here, Math.min(radius, 3));
    }
    d +=
      (0.16 * noise(x / 1.9, y / 1.9, from + 20) +
        0.2 * noise(x / 4, y / 2.6, from + 22) +
        0.06 * noise(x / 0.9, y / 0.6, from + 23)) *
      Math.min(1, size / 4);
    const rim = Math.min(half, size * 0.3);
    if (d > rim * 1.5) return;
    const left = remnant(x, y, Math.max(3, size * 0.8), from + 9);
    const wide = rim * (0.25 + 0.7 * left);
    const tide = Math.exp(-(((d + rim * 0.5) / (d < -rim * 0.5 ? wide * 1.6 : wide * 0.7)) ** 2)) * left;
    // An older shore further in, where the drop stood still for a while.
    const inner = Math.exp(-(((d + size * 0.3) / (rim * 0.5)) ** 2)) * remnant(x, y, 5, from + 19);
    const body = (1 - ease(-rim * 1.6, rim * 0.4, d)) * Math.exp(d / (size * 0.45));
    mark(
      i,
      weight *
        settled(x, y, from + 12) *
        Math.max(
          0.66 * tide * (1 + 0.5 * rough(x / 2.2, y / 2.2, from + 21, 2)),
          // Away from its shore it died out in flecks.
          body * Math.max(0, 0.3 + 0.5 * rough(x / 4, y / 4, from + 8, 3)) + 0.16 * inner,
        ),
    );
  });
};

/** Water left by a glass or by drops: white in the film, dull in a wax, black once it has reached the wood. */
export const whiteRing = (b: Board, f: WhiteRing, from: number): void => {
  const center = placed(b, random(from), f.at);
  const mark = (i: number, share: number) => {
    if (f.color === 'black') stain(b, i, BLACK_STAIN, 1.3 * f.strength * share);
    else if (f.color === 'white') scatter(b, i, 0.55 * f.strength * share);
    else {
      scatter(b, i, 0.3 * f.strength * share);
      // Pores are duller than that already.
      if (b.roughness[i]! < 0.24) roughen(b, i, 0.24, Math.min(1, 1.5 * f.strength * share));
    }
  };
  if (f.shape === 'ring') rings(b, f, from, center, mark);
  else drops(b, f, from, center, mark);
};
