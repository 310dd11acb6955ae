import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, roughen } from '../field.ts';
import { ease, noise, random, rough } from '../noise.ts';
import { placed, radians } from '../stamp.ts';

/** A matte film rubbed glossy: a stroke with streaky ends, no relief. */
export const burnish = (b: Board, f: FeatureOf<'burnish'>, from: number): void => {
  const [cx, cy] = placed(b, random(from), f.at);
  const turn = radians(f.angle - 14);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const half = f['length-mm'] / 2;
  const wide = f['width-mm'] / 2;
  everywhere(b, (i, x, y) => {
    const u = (x - cx) * c + (y - cy) * s;
    const v = -(x - cx) * s + (y - cy) * c + (u * u) / (half * 7);
    if (Math.abs(u) > half * 1.3 || Math.abs(v) > wide * 1.5) return;
    const thread = noise(u / 26, v / 0.8, from);
    const ends = 1 - ease(half * 0.75, half * 1.05, Math.abs(u) + thread * half * 0.16);
    const sides = 1 - ease(wide * 0.6, wide * 1.1, Math.abs(v) + 0.6 * rough(u / 9, v / 9, from + 1, 2));
    roughen(b, i, 0.016, Math.min(1, 1.25 * f.strength) * ends * sides * (0.9 + 0.2 * thread));
  });
};
