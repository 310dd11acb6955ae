import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { cells, ease, noise, rough } from '../noise.ts';

/**
 * Grains of many sizes, squashed and out of round, one a cell: `density` 0–1 of the cells hold one. Returns the height,
 * 0–1.
 */
const grainsOf = (size: number, seed: number) => {
  const cell = { first: 0, second: 0, id: 0 };
  return (x: number, y: number, density: number): number => {
    const bent = 0.42 * noise(x / (size * 0.8), y / (size * 0.8), seed + 5);
    cells(x / size + bent, y / size - bent, seed, cell);
    const lies = (cell.id & 0xff) / 256;
    if (lies > density) return 0;
    const radius = 0.2 + 0.42 * (((cell.id >>> 8) & 0xff) / 256) ** 2.5;
    return radius * 1.7 * Math.exp(-((cell.first / radius) ** 2)) * Math.min(1, (density - lies) * 6);
  };
};

/** Droplets that landed half dry: a dull sandy mat of fused grains, a few large, that thins out to single dust. */
export const drySpray = (b: Board, f: FeatureOf<'dry-spray'>, from: number): void => {
  const size = Math.max(f['grain-um'] / 1000, b.pitch * 1.6);
  const coarse = grainsOf(size * 1.9, from);
  const middle = grainsOf(size * 0.85, from + 1);
  const mat = Math.max(size * 0.42, b.pitch * 1.25);
  everywhere(b, (i, x, y) => {
    let lies = 1;
    const drift = 0.3 * rough(x / 17, y / 13, from + 2, 2) + 0.1 * noise(x / 2.2, y / 2.2, from + 3);
    if (f.spread === 'band') lies = ease(-0.1, 1.15, y / b.heightMm + 0.14 * (x / b.widthMm - 0.5) + drift);
    else if (f.spread === 'corner')
      lies =
        1 - ease(0.05, 1.1, Math.hypot((b.widthMm - x) / b.widthMm, (b.heightMm - y) / b.heightMm) + drift);
    const dust = Math.max(
      0,
      noise(x / mat, y / mat, from + 6) + 0.5 * noise(x / (mat * 2.3), y / (mat * 2.3), from + 7) + 0.25,
    );
    const grain = coarse(x, y, lies * lies * 0.2) + 0.8 * middle(x, y, lies * 0.55) + 0.5 * lies * dust;
    raise(b, i, f['grain-um'] * 0.12 * f.strength * grain);
    scatter(b, i, f.strength * (0.05 * lies + 0.1 * grain * (0.4 + 0.6 * lies)));
    roughen(b, i, 0.26, Math.min(1, (1.1 * lies + 0.5 * grain) * f.strength * 1.2));
  });
};
