import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen } from '../field.ts';
import { remnant, stray } from '../mask.ts';
import { drawnOut, ease, noise, random, rough } from '../noise.ts';
import { placed, radians } from '../stamp.ts';

/**
 * One pull of a finger: it comes down softly, bears harder, and narrows as it lifts; what lay on top is pushed aside in
 * bits and left as a smeared heap with strings at the end.
 */
export const swipe = (b: Board, f: FeatureOf<'swipe'>, from: number): void => {
  const [cx, cy] = placed(b, random(from), f.at);
  const turn = radians(f.angle);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const half = f['length-mm'] / 2;
  const wide = f['width-mm'] / 2;
  everywhere(b, (i, x, y) => {
    const u = (x - cx) * c + (y - cy) * s;
    const v = -(x - cx) * s + (y - cy) * c + (u * u) / (half * 8) + 0.9 * noise(u / 15, 5, from);
    if (Math.abs(u) > half * 1.7 || Math.abs(v) > wide * 2.1) return;
    const t = (u + half) / (2 * half);
    const thread = drawnOut(u, v, 26, 1, from) + 0.4 * drawnOut(u, v, 12, 0.32, from + 1);
    const strand = noise(2.5, v / (wide * 0.55), from + 2) + 0.7 * noise(4.5, v / 0.9, from + 3);
    // It narrows as it lifts; the sides come and go with the ball of the finger.
    const border =
      wide * (1 - 0.4 * ease(0.5, 1.1, t)) * (1 + 0.2 * stray(u, v > 0 ? 3 : 40, wide * 2.4, from + 4));
    const blunt = Math.sqrt(Math.max(0, 1 - Math.min(1, Math.abs(v) / wide) ** 2));
    const lands = ease(-2.2, 2.6, u + half - wide * 0.9 * (1 - blunt) + 1.6 * strand);
    const lifts = ease(0, 0.42, 1 - t + 0.3 * strand + 0.1 * thread);
    // One side bore hard and is cut clean, the other only brushed in threads.
    const brushed = v > 0 ? 0.5 : 0.16;
    const side = ease(
      border * brushed,
      -border * 0.14,
      Math.abs(v) - border * 0.9 + 0.3 * wide * brushed * 3 * thread,
    );
    const inside = Math.min(lands, side) * lifts;
    // The skin caught and slid: it skipped threads, and bore less for a moment.
    const skipped = ease(
      0.2,
      0.75,
      drawnOut(u, v, 16, 1.3, from + 11) + 0.3 * drawnOut(u, v, 7, 0.5, from + 12),
    );
    const eased = ease(0.05, 0.75, noise(u / 7, v / (wide * 1.5), from + 13));
    const bears = 1 - 0.5 * skipped - 0.4 * eased * (0.5 + 0.5 * Math.max(0, thread));
    const cleared =
      f.strength * Math.max(0, Math.min(1, inside * (bears + 0.18 * thread * ease(0.35, 1, t))));
    b.haze[i] = b.haze[i]! * Math.max(0, 1 - 1.02 * cleared);
    roughen(b, i, f.leaves === 'shine' ? 0.012 : 0.16, 0.95 * Math.max(0, cleared));
    // More is pushed to one side, growing along the way; it breaks off in rolls.
    const uneven = remnant(u, v > 0 ? 0 : 50, 5, from + 6) * (v > 0 ? 1 : 0.55) * ease(0.08, 0.75, t);
    const over = Math.abs(v) - border * 1.03;
    const roll =
      Math.exp(-((over / (over > 0 ? wide * 0.2 : wide * 0.09)) ** 2)) * uneven * ease(1.05, 0.9, t);
    // What it pushed before it lies at the end as a bow.
    const tip = half * (0.93 + 0.05 * strand) - (0.45 * v * v) / wide;
    const lumps =
      0.75 +
      0.7 * rough(u / 3.2, v / 2.6, from + 7, 2) +
      0.25 * noise((u + 0.8 * thread) / 0.9, v / 1.6, from + 8);
    const heap =
      Math.exp(-(((u - tip) / (u > tip ? wide * 0.55 : wide * 0.28)) ** 2)) *
      Math.exp(-((v / (wide * 0.8)) ** 4)) *
      Math.max(0, lumps);
    const string =
      ease(0.25, 0.8, noise(u / 30, v / 0.55, from + 9)) *
      ease(half * 0.9, half * 1.05, u) *
      ease(half * (1.5 + 0.3 * strand), half, u) *
      Math.exp(-((v / (wide * 0.5)) ** 4));
    raise(
      b,
      i,
      f['ridge-um'] *
        (0.8 * roll * lumps + 0.9 * heap + 0.14 * string - 0.22 * cleared + 0.035 * thread * inside),
    );
    b.haze[i] = b.haze[i]! * (1 + 0.7 * Math.min(1, roll + heap + 0.5 * string));
  });
};
