import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, tint } from '../field.ts';
import { between, noise, random } from '../noise.ts';
import { places } from '../places.ts';
import { cover, disc } from '../stamp.ts';

const SHADE = [0.02, 0.016, 0.013] as const;
const DUST = [0.42, 0.37, 0.3] as const;

/** Holes where the film never closed: over pores drawn out along the grain, of unequal depth, a few with pale dust in them. */
export const pinholes = (b: Board, f: FeatureOf<'pinholes'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  const pores = f.along === 'pores';
  for (const point of places(b, next, f['per-cm2'], f.along)) {
    const radius = between(next, low, high, 2.2) / 2;
    const long = between(next, 1, pores ? 1.8 : 1.2, 1.5);
    const deep = between(next, 0.45, 1);
    const dusty = next() < 0.18;
    const id = Math.floor(next() * 1e6);
    const lipped = between(next, -3, 5);
    disc(b, point, radius * 2.2 * long + b.pitch, (i, _d, dx, dy) => {
      const d =
        Math.hypot(dx / long, dy) * (1 + 0.25 * noise((dx / radius) * 0.7 + 3, (dy / radius) * 0.7, id));
      const share = Math.max(0, cover(b, radius - d, radius * 2));
      // The film runs down into the hole; one side of it stands up a little.
      const sunk = Math.exp(-((d / (radius * 1.5)) ** 2));
      const side =
        Math.exp(-(((d - radius * 1.4) / (radius * 0.5)) ** 2)) *
        Math.max(0, noise(dx / radius, dy / radius, id + 1) + 0.2);
      raise(b, i, -deep * (28 * share + 7 * sunk) + lipped * side);
      tint(b, i, dusty ? DUST : SHADE, (dusty ? 0.6 : 0.5 + 0.42 * deep) * share);
    });
  }
};
