import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, roughen, tint } from '../field.ts';
import { between, ease, noise, random } from '../noise.ts';
import { places } from '../places.ts';
import { disc } from '../stamp.ts';

const SHADE = [0.016, 0.012, 0.009] as const;
const DUST = [0.42, 0.37, 0.3] as const;
/** Over open wood a hole that stands on no pore is rare. */
const ASTRAY = 0.07;
const PORE_UM = -3;

/**
 * Holes where the film never closed: the film runs down into them past a soft lip; over pores drawn out along the
 * grain, of unequal depth, a few with pale dust in them.
 */
export const pinholes = (b: Board, f: FeatureOf<'pinholes'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  const pores = f.along === 'pores';
  for (const point of places(b, next, f['per-cm2'], f.along)) {
    const astray = next() < ASTRAY;
    const radius = between(next, low, pores && astray ? low * 2 : high, pores ? 3.4 : 2.2) / 2;
    const long = between(next, 1, pores ? 2 : 1.2, 1.7);
    const deep = between(next, 0.4, 1);
    const dusty = next() < 0.05;
    const id = Math.floor(next() * 1e6);
    const lipped = between(next, 0.1, 1.1, 1.6);
    const [column, row] = [Math.floor(point[0] / b.pitch), Math.floor(point[1] / b.pitch)];
    if (pores && !astray && (b.height[row * b.columns + column] ?? 0) > PORE_UM) continue;
    disc(b, point, radius * 2.4 * long + b.pitch, (i, _d, dx, dy) => {
      const t =
        (Math.hypot(dx / long, dy) / radius) *
        (1 + 0.26 * noise((dx / radius) * 0.7 + 3, (dy / radius) * 0.7, id));
      const bowl = Math.exp(-(t ** 3));
      const lip =
        Math.exp(-(((t - 1.45) / 0.45) ** 2)) * Math.max(0, 0.5 + noise(dx / radius, dy / radius, id + 1));
      raise(b, i, -deep * 46 * bowl + lipped * lip);
      // A hole mirrors nothing.
      roughen(b, i, 0.3, ease(1, 0.7, t));
      // Light finds its way to the walls and hardly to the bottom.
      tint(b, i, dusty ? DUST : SHADE, (dusty ? 0.5 : 0.95 * deep ** 0.4) * ease(0.95, 0.66, t));
    });
  }
};
