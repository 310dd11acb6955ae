import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen } from '../field.ts';
import { ease, noise, random } from '../noise.ts';
import { placed, radians } from '../stamp.ts';

/** One stroke of a finger: what lay on top is pushed aside to the borders and the end of the track. */
export const swipe = (b: Board, f: FeatureOf<'swipe'>, from: number): void => {
  const [cx, cy] = placed(b, random(from), f.at);
  const turn = radians(f.angle);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const half = f['length-mm'] / 2;
  const wide = f['width-mm'] / 2;
  everywhere(b, (i, x, y) => {
    const u = (x - cx) * c + (y - cy) * s;
    const v = -(x - cx) * s + (y - cy) * c + (u * u) / (half * 9) + 0.5 * noise(u / 12, 5, from);
    if (Math.abs(u) > half * 1.25 || Math.abs(v) > wide * 1.9) return;
    const thread = noise(u / 40, v / 0.7, from) + 0.5 * noise(u / 22, v / 0.3, from + 1);
    // Round where the finger came down, heaped up where it lifted.
    const lands = 1 - ease(-0.6, 0.6, Math.hypot(Math.min(0, u + half * 0.8), v) - wide);
    const lifts = 1 - ease(half * 0.72, half, u + half * 0.035 * thread);
    const inside = Math.min(
      u < -half * 0.8 ? lands : 1 - ease(wide * 0.82, wide, Math.abs(v) + 0.2 * thread),
      lifts,
    );
    const cleared = f.strength * inside * Math.min(1, 0.86 + 0.2 * thread);
    b.haze[i] = b.haze[i]! * (1 - cleared);
    roughen(b, i, f.leaves === 'shine' ? 0.012 : 0.16, 0.92 * cleared);
    const side =
      Math.exp(-(((Math.abs(v) - wide * 1.08) / (wide * 0.13)) ** 2)) * ease(-half, -half * 0.7, u) * lifts;
    const heap =
      Math.exp(-(((u - half * 0.95 - (v * v) / (wide * 3)) / (wide * 0.34)) ** 2)) *
      (1 - ease(wide * 0.8, wide * 1.2, Math.abs(v)));
    raise(
      b,
      i,
      f['ridge-um'] *
        (side * (0.7 + 0.4 * noise(u / 3, 1, from)) + heap * (1 + 0.12 * thread) - 0.25 * cleared),
    );
    b.haze[i] = b.haze[i]! * (1 + 0.5 * Math.max(side, heap));
  });
};
