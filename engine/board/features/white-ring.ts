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
  if (radius + half > GLASS_MM)
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
      // The water stood under the foot: its shore outside is crisp, inward it crept on, here more and there less.
      const wobble =
        half * (0.3 * rough(x / 7, y / 7, from + 2, 2) + 0.1 * noise(x / 1.1, y / 1.1, from + 6));
      const d = off + wobble;
      const out = half * (0.5 + 0.35 * wet);
      const crept = half * (0.7 + 0.9 * ease(-0.4, 0.5, noise(x / 6, y / 6, from + 5)));
      const body = ease(out + 0.22, out - 0.12, d) * ease(-out - crept, -0.2 * half, d);
      const tide = Math.exp(-(((d - out + 0.22) / 0.24) ** 2)) * remnant(x, y, 6, from + 9);
      share = Math.max(share, here * (0.62 * body * settled(x, y, from + 12) + 0.42 * tide));
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
    d += 0.3 * rough(x / 3, y / 3, from + 20, 3) * Math.min(1, size / 4);
    const rim = Math.min(half, size * 0.3);
    if (d > rim * 1.5) return;
    // It stood still longest at its shore, which is crisp outside and fades inward; older shores lie further in.
    const left = 0.3 + 0.7 * remnant(x, y, Math.max(3, size * 0.8), from + 9);
    const tide =
      ease(0.16, -0.1, d) * Math.exp(-((Math.min(0, d + 0.12) / (rim * (0.3 + 0.6 * left))) ** 2)) * left;
    const inner = Math.exp(-(((d + size * 0.34) / (rim * 0.4)) ** 2)) * remnant(x, y, 5, from + 19);
    const body = ease(0.16, -0.1, d) * Math.exp(d / (size * 0.4));
    mark(
      i,
      weight *
        settled(x, y, from + 12) *
        Math.max(0.8 * tide, body * Math.max(0, 0.3 + 0.3 * rough(x / 4, y / 4, from + 8, 2)) + 0.16 * inner),
    );
  });
};

/** Water left by a glass or by drops: white in the film, dull in a wax, black once it has reached the wood. */
export const whiteRing = (b: Board, f: WhiteRing, from: number): void => {
  const center = placed(b, random(from), f.at);
  const mark = (i: number, held: number) => {
    // An open pore has no film over it that could whiten.
    const share = f.color === 'black' ? held : held * ease(-7, -1.5, b.height[i]!);
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
