import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { cells, ease, rough } from '../noise.ts';

/** Round grains of many sizes, one a cell: `density` 0–1 of the cells hold one. Returns the height, 0–1. */
const grainsOf = (size: number, seed: number) => {
  const cell = { first: 0, second: 0, id: 0 };
  return (x: number, y: number, density: number): number => {
    cells(x / size, y / size, seed, cell);
    if ((cell.id & 0xff) / 256 > density) return 0;
    const radius = 0.16 + 0.34 * (((cell.id >>> 8) & 0xff) / 256) ** 2;
    const t = cell.first / radius;
    return t < 1 ? radius * 2 * (1 - t * t) : 0;
  };
};

/** Droplets that landed half dry: dust of round grains, dense at the rim of the pattern and thinning out. */
export const drySpray = (b: Board, f: FeatureOf<'dry-spray'>, from: number): void => {
  const size = Math.max(f['grain-um'] / 1000, b.pitch * 1.6);
  const coarse = grainsOf(size * 1.5, from);
  const fine = grainsOf(size * 0.8, from + 1);
  everywhere(b, (i, x, y) => {
    let lies = 1;
    const drift = 0.16 * rough(x / 12, y / 12, from + 2, 3);
    if (f.spread === 'band') lies = ease(0.12, 0.95, y / b.heightMm + drift);
    else if (f.spread === 'corner')
      lies = 1 - ease(0.1, 1, Math.hypot((b.widthMm - x) / b.widthMm, (b.heightMm - y) / b.heightMm) + drift);
    const grain = Math.max(coarse(x, y, lies * 0.5), 0.6 * fine(x, y, lies * 0.7));
    raise(b, i, f['grain-um'] * 0.17 * f.strength * grain);
    scatter(b, i, f.strength * (0.05 * lies + 0.11 * grain));
    roughen(b, i, 0.24, Math.min(1, (0.9 * lies + 0.4 * grain) * f.strength * 1.2));
  });
};
