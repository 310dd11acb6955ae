import type { FeatureOf } from '../../model/board.ts';
import { type Board, inBands, raise, roughen, scatter } from '../field.ts';
import { between, ease, noise, random } from '../noise.ts';
import type { Steps } from '../steps.ts';
import { traceOf, type Wipe, wipesOver } from '../wipes.ts';

/** Short to-and-fro arcs of a polishing hand, no two alike, over the whole board. */
const scrubbed = (b: Board, seed: number, width: number): Wipe[] => {
  const next = random(seed);
  const count = Math.ceil((3.4 * b.widthMm * b.heightMm) / (width * width * 2.2));
  return Array.from({ length: count }, () => {
    const radius = width * between(next, 0.7, 6, 1.8);
    return {
      middle: [next() * b.widthMm, next() * b.heightMm],
      heading: between(next, -1.3, 1.6),
      radius: radius * (next() < 0.65 ? 1 : -1),
      half: Math.min(radius * 1.4, width * between(next, 0.6, 1.7)),
      wide: width * between(next, 0.16, 0.62, 1.3),
      drift: between(next, -0.45, 0.45),
      id: Math.floor(next() * 1e6),
    };
  });
};

/** Loose wax moved about in arcs, shiny and dull; or wax that set in the ridges of circling strokes, dull all over. */
export function* waxSmear(b: Board, f: FeatureOf<'wax-smear'>, from: number): Steps {
  const set = f.state === 'set';
  const width = f['width-mm'];
  const count = Math.max(7, Math.round((3 * b.heightMm) / width));
  const passes = set
    ? scrubbed(b, from, width)
    : wipesOver(b, random(from), { count, width, radius: [0.25 * b.widthMm, 1.6 * b.widthMm] });
  const traces = passes.map(traceOf);
  yield* inBands(b, (i, x, y) => {
    if (set) {
      roughen(b, i, 0.24, 0.9);
      scatter(b, i, 0.05 * f.strength * (1 + 0.6 * noise(x / 9, y / 7, from)));
    }
    traces.forEach((at, n) => {
      const { share, off, run, thread } = at(x, y);
      if (share === 0) return;
      const ridge = noise(run / 40, off / 1.1, n + from);
      if (set) {
        const heaped = Math.exp(-(((Math.abs(off) / (passes[n]!.wide * 0.62) - 1) / 0.16) ** 2));
        raise(b, i, f.strength * share * (16 * ridge + 15 * thread + 9 * heaped));
        scatter(b, i, 0.11 * f.strength * share * Math.max(0, ridge + 0.3 * thread));
        return;
      }
      // What the cloth pushed aside lies along one side as a greasy ridge, here thick and there gone.
      const side = off * (n % 2 ? 1 : -1);
      const border =
        Math.exp(-(((side / (passes[n]!.wide * 0.6) - 1) / 0.14) ** 2)) *
        ease(-0.2, 0.5, noise(run / 9, n + 0.5, from + 5));
      raise(b, i, f.strength * share * (1.6 * thread + 6 * border));
      roughen(b, i, n % 2 ? 0.018 : 0.16, Math.min(1, 1.25 * f.strength * share * (0.7 + 0.5 * thread)));
      scatter(b, i, Math.max(0, f.strength * share * (0.06 + 0.075 * thread + 0.08 * border)));
    });
  });
}
