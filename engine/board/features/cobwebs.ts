import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, roughen, tint } from '../field.ts';
import { between, noise, random } from '../noise.ts';
import { cover, disc, type Point, stroke, wander } from '../stamp.ts';

const THREAD = [0.55, 0.54, 0.52] as const;

/** Finish that dried in the air to threads: curled, in bunches, forked, with a knot where a drop hung on. */
export const cobwebs = (b: Board, f: FeatureOf<'cobwebs'>, from: number): void => {
  const next = random(from);
  const thread = (at: Point, heading: number, length: number, half: number, forks: boolean) => {
    const line = wander(next, at, heading, length, between(next, 0.8, 5.5), 0.25);
    const id = Math.floor(next() * 1e6);
    stroke(b, line, half + 0.16, (i, d, run) => {
      // Drawn out and gathered again on its way, torn at a few places.
      const gathers = Math.max(
        0,
        0.75 + 0.6 * noise(run / 1.9, half * 900, id) + 0.4 * noise(run / 0.6, 3, id),
      );
      const thin =
        (0.3 + 0.7 * Math.min(1, Math.min(run, length - run) / (length * 0.2 + 0.1))) *
        Math.min(1.15, gathers);
      const share = Math.max(0, cover(b, half - d, half * 2)) * thin;
      tint(b, i, THREAD, Math.min(0.9, 1.4 * share));
      raise(b, i, half * 1600 * (share + 0.1 * Math.exp(-d / 0.1)));
      roughen(b, i, 0.1, share);
    });
    for (let beads = Math.floor(between(next, 0, 4)); beads > 0; beads--) {
      const at = line[Math.floor(line.length * next())]!;
      const size = half * between(next, 1.1, 3.2, 2);
      disc(b, at, size * 1.4, (i, d) => {
        const share = Math.max(0, cover(b, size - d, size * 2));
        tint(b, i, THREAD, 0.55 * share);
        raise(b, i, size * 900 * Math.max(0, 1 - (d / (size * 1.4)) ** 2));
      });
    }
    if (!forks) return;
    const fork = line[Math.floor(line.length * between(next, 0.2, 0.7))]!;
    thread(fork, heading + between(next, -1.3, 1.3), length * 0.4, half * 0.6, false);
    if (next() < 0.6)
      disc(b, fork, half * between(next, 2, 4.5), (i, d) => {
        const share = Math.max(0, cover(b, half * 3 - d, half * 6));
        tint(b, i, THREAD, 0.6 * share);
        raise(b, i, half * 2600 * share * Math.sqrt(Math.max(0, 1 - (d / (half * 4.6)) ** 2)));
      });
  };
  for (let n = 0; n < f.count; ) {
    const bunch: Point = [between(next, -0.05, 0.95) * b.widthMm, between(next, 0, 1) * b.heightMm];
    const drift = next() * Math.PI;
    for (let k = Math.ceil(between(next, 3, 10)); k > 0 && n < f.count; k--, n++) {
      const at: Point = [bunch[0] + between(next, -4, 4), bunch[1] + between(next, -3, 3)];
      const half = (f['thickness-um'] / 2000) * between(next, 0.35, 1.1, 1.1);
      thread(
        at,
        drift + between(next, -0.8, 0.8),
        between(next, 0.12, 0.7, 1.4) * b.widthMm,
        half,
        n % 3 === 0,
      );
    }
  }
};
