import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, scatter, stain } from '../field.ts';
import { between, noise, random, rough } from '../noise.ts';
import { disc, placed } from '../stamp.ts';

const BLACK_STAIN = [1.6, 1.5, 1.35] as const;

/** Water left by a glass or by drops: white in the film; black has reached the wood. */
export const whiteRing = (b: Board, f: FeatureOf<'white-ring'>, from: number): void => {
  const next = random(from);
  const [cx, cy] = placed(b, next, f.at);
  const half = f['width-mm'] / 2;
  const mark = (i: number, share: number) => {
    if (f.color === 'white') scatter(b, i, 0.5 * f.strength * share);
    else stain(b, i, BLACK_STAIN, 1.3 * f.strength * share);
  };
  const line = (distance: number, width: number): number => Math.exp(-((distance / width) ** 2));
  if (f.shape === 'ring') {
    const radius = f['diameter-mm'] / 2 - half;
    everywhere(b, (i, x, y) => {
      const angle = Math.atan2(y - cy, x - cx);
      const off = Math.hypot(x - cx, y - cy) - radius;
      if (Math.abs(off) > half * 4) return;
      const broken = 0.72 + 0.5 * noise(Math.cos(angle) * 2.1, Math.sin(angle) * 2.1, from);
      const wobble = 0.3 * half * rough(x / 5, y / 5, from + 2, 2);
      mark(i, Math.max(0, broken) * (line(off + wobble, half) + 0.55 * line(off - half * 0.8, half * 0.32)));
    });
    return;
  }
  for (let n = 0; n < 9; n++) {
    const radius = (f['diameter-mm'] / 2) * (n === 0 ? 1 : between(next, 0.15, 0.7, 1.6));
    const drop = n === 0 ? ([cx, cy] as const) : ([next() * b.widthMm, next() * b.heightMm] as const);
    disc(b, drop, radius * 1.3, (i, d, dx, dy) => {
      const edge = d - radius * (1 + 0.06 * noise(dx / radius, dy / radius, from + n));
      mark(i, line(edge, Math.min(half, radius * 0.16)) + (edge < 0 ? 0.22 : 0));
    });
  }
};
