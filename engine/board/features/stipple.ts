import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise } from '../field.ts';
import { ease, noise, start } from '../noise.ts';

/**
 * Height of rounded pebbles close together, one a cell of unit width, of unequal size; where two meet they melt into
 * one.
 */
const pebbles = (x: number, y: number, seed: number): number => {
  const x0 = Math.floor(x);
  const y0 = Math.floor(y);
  let sum = 0;
  for (let j = -1; j <= 1; j++) {
    for (let k = -1; k <= 1; k++) {
      const h = start(seed + (x0 + k) * 7919, y0 + j);
      const dx = k + 0.1 + 0.8 * ((h & 0xff) / 256) - (x - x0);
      const dy = j + 0.1 + 0.8 * (((h >>> 8) & 0xff) / 256) - (y - y0);
      const size = (h >>> 16) / 65536;
      const reach = 0.46 + 0.26 * size * size;
      const t = 1 - (dx * dx + dy * dy) / (reach * reach);
      if (t > 0) sum += (0.5 + 0.6 * size) * t * t;
    }
  }
  return sum;
};

/**
 * Pebbles pulled up by a roller nap, dimples between, drawn out a little along its way and more where one lane met the
 * next.
 */
export const stipple = (b: Board, f: FeatureOf<'stipple'>, from: number): void => {
  const s = f['spacing-mm'];
  const lane = b.heightMm * 0.68;
  everywhere(b, (i, x, y) => {
    const u = x + 0.25 * s * noise(x / (1.3 * s), y / (1.3 * s), from + 3);
    const v = y + 0.25 * s * noise(x / (1.3 * s), y / (1.3 * s), from + 4);
    const peak = pebbles((0.8 * u + 0.6 * v) / (s * 0.95), (0.8 * v - 0.6 * u) / (s * 0.95), from);
    const swell =
      noise(u / (s * 2.1), v / (s * 1.4), from + 1) + 0.4 * noise(u / (s * 0.6), v / (s * 0.5), from + 2);
    // The nap stood on its edge at the border of the lane.
    const d = y - lane - 0.03 * x - 0.6 * noise(x / 9, 2, from + 6);
    const ridge = Math.exp(-((d / 0.8) ** 2)) * ease(-0.5, 0.4, noise(x / 8, 7, from + 7));
    const lifted = 0.85 + 0.3 * noise(x / 18, y / 18, from + 5) + 0.25 * ease(1.2, -1.2, d);
    const rise = f['height-um'] * (lifted * (0.85 * Math.min(1.1, peak) + 0.1 * swell - 0.3) + 0.3 * ridge);
    raise(b, i, rise);
    b.film[i] = Math.max(3, b.film[i]! + rise);
  });
};
