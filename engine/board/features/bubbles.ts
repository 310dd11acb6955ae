import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, roughen, scaleFilm, scatter, stain } from '../field.ts';
import { between, noise, random } from '../noise.ts';
import { places } from '../places.ts';
import { disc } from '../stamp.ts';

/** The rim of a bubble bends light away from what lies below. */
const RIM_SHADE = [0.22, 0.22, 0.22] as const;
/** How tall a dome stands, as a share of its radius. */
const TALL = 0.26;

/** Domes of air under a skin, many small to each large one, and the ragged pits where they broke. */
export const bubbles = (b: Board, f: FeatureOf<'bubbles'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  const domes = new Float32Array(b.height.length);
  for (const point of places(b, next, f['per-cm2'], f.along)) {
    const radius = between(next, low, high, 2.8) / 2;
    const open = next() < f.burst;
    const tall = radius * 1000 * TALL * between(next, 0.75, 1.15);
    const id = Math.floor(next() * 1e6);
    disc(b, point, radius * 1.8, (i, d, dx, dy) => {
      const torn = open ? 0.16 * noise((dx / radius) * 1.6 + 4, (dy / radius) * 1.6, id) : 0;
      const t = d / (radius * (1 + torn));
      const foot = 0.13 * tall * Math.exp(-(((t - 1.08) / 0.3) ** 2));
      if (t >= 1) {
        raise(b, i, foot);
        return;
      }
      if (open) {
        raise(b, i, foot * 2 - Math.min(tall, 45) * (1 - t * t));
        scaleFilm(b, i, 0.3);
        scatter(b, i, 0.06 * t);
      } else {
        domes[i] = Math.max(domes[i]!, tall * (1 - t * t));
        b.haze[i] = Math.max(b.haze[i]!, 0.012 + 0.06 * t ** 6);
        stain(b, i, RIM_SHADE, t ** 5);
        roughen(b, i, 0.016, 0.9);
      }
    });
  }
  for (let i = 0; i < domes.length; i++) raise(b, i, domes[i]!);
};
