import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, stain, tint } from '../field.ts';
import { between, noise, random } from '../noise.ts';
import { places } from '../places.ts';
import { cover, disc } from '../stamp.ts';

const CORE = { orange: [0.3, 0.085, 0.018], 'blue-black': [0.025, 0.028, 0.042] } as const;
const HALO = { orange: [0.12, 0.7, 1.5], 'blue-black': [1, 0.9, 0.7] } as const;

/** Points of iron with a stained halo. */
export const rust = (b: Board, f: FeatureOf<'rust'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  for (const point of places(b, next, f['per-cm2'])) {
    const radius = between(next, low, high, 2.2) / 2;
    const id = Math.floor(next() * 1e6);
    disc(b, point, radius * 3, (i, d, dx, dy) => {
      const edge = radius * (1 + 0.35 * noise((dx / radius) * 0.8, (dy / radius) * 0.8, id));
      stain(b, i, HALO[f.color], 0.55 * Math.exp(-((d / (radius * 1.5)) ** 2)));
      const share = Math.max(0, cover(b, edge - d, radius * 2));
      tint(b, i, CORE[f.color], share * 0.92);
      raise(b, i, 12 * share);
    });
  }
};
