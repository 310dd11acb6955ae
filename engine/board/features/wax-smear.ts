import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { noise, random } from '../noise.ts';
import { traceOf, type Wipe, wipesOver } from '../wipes.ts';

/** Circles of a polishing hand, side by side over the board. */
const circles = (b: Board, seed: number, width: number): Wipe[] => {
  const next = random(seed);
  const rows = Math.max(2, Math.round(b.heightMm / (width * 1.5)));
  const columns = Math.max(2, Math.round(b.widthMm / (width * 1.5)));
  return Array.from({ length: rows * columns }, (_, n) => {
    const radius = width * (0.45 + 0.5 * next());
    return {
      middle: [
        (((n % columns) + 0.2 + 0.6 * next()) * b.widthMm) / columns,
        ((Math.floor(n / columns) + 0.2 + 0.6 * next()) * b.heightMm) / rows - radius,
      ],
      heading: 0,
      radius,
      half: Math.PI * radius,
      wide: radius * 0.6,
      id: Math.floor(next() * 1e6),
    };
  });
};

/** Loose wax moved about in arcs, shiny and dull; or wax that set in the ridges of circling strokes, dull all over. */
export const waxSmear = (b: Board, f: FeatureOf<'wax-smear'>, from: number): void => {
  const set = f.state === 'set';
  const width = f['width-mm'];
  const count = Math.max(7, Math.round((3 * b.heightMm) / width));
  const passes = set
    ? circles(b, from, width)
    : wipesOver(b, random(from), { count, width, radius: [0.4 * b.widthMm, 1.1 * b.widthMm] });
  const traces = passes.map(traceOf);
  everywhere(b, (i, x, y) => {
    if (set) {
      roughen(b, i, 0.24, 0.9);
      scatter(b, i, 0.05 * f.strength * (1 + 0.6 * noise(x / 9, y / 7, from)));
    }
    traces.forEach((at, n) => {
      const { share, off, run, thread } = at(x, y);
      if (share === 0) return;
      const ridge = noise(run / 40, off / 1.1, n + from);
      if (set) {
        raise(b, i, f.strength * share * (15 * ridge + 7 * thread));
        scatter(b, i, 0.13 * f.strength * share * Math.max(0, ridge + 0.2 * thread));
        return;
      }
      const border = Math.exp(-(((Math.abs(off) / (passes[n]!.wide * 0.62) - 1) / 0.12) ** 2));
      raise(b, i, f.strength * share * (1.8 * thread + 2.5 * border));
      roughen(b, i, n % 2 ? 0.018 : 0.16, Math.min(1, 0.9 * f.strength * share * (0.7 + 0.5 * thread)));
      scatter(b, i, Math.max(0, f.strength * share * (0.022 + 0.03 * thread + 0.03 * border)));
    });
  });
};
