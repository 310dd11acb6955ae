import type { FeatureOf } from '../../model/board.ts';
import { type Board, pour, raise, roughen } from '../field.ts';
import { between, type Random, random } from '../noise.ts';
import { places } from '../places.ts';
import { disc, type Point } from '../stamp.ts';

/** How a drop is drawn out along its flight, as a share of its radius. */
const DRAWN_OUT = [1.2, 2.6] as const;
/** Drops of one pass fly one way, give or take this much, radians. */
const SPREAD = 0.35;

/** One drop that hit in flight: a flat lobed pancake, round behind and drawn out in front. */
const blob = (b: Board, next: Random, at: Point, radius: number, heading: number, tall: number): void => {
  const long = between(next, ...DRAWN_OUT);
  const turn = next() * 6.28;
  const ux = Math.cos(heading);
  const uy = Math.sin(heading);
  disc(b, at, radius * (long + 0.3), (i, _distance, dx, dy) => {
    const ahead = dx * ux + dy * uy;
    const u = ahead > 0 ? ahead / long : ahead;
    const v = dy * ux - dx * uy;
    const angle = Math.atan2(v, u);
    const lobes = 1 + 0.1 * Math.sin(3 * angle + turn) + 0.07 * Math.sin(5 * angle - 2 * turn);
    const t = Math.hypot(u, v * (1 + Math.max(0, u / radius) * 0.7)) / (radius * lobes);
    if (t >= 1) return;
    const rise = tall * (1 - t ** 4) ** 0.8;
    raise(b, i, rise);
    pour(b, i, rise);
    roughen(b, i, 0.014, 0.9);
  });
};

/** Drops spat by a nozzle: flat, drawn out one way, small ones thrown ahead; glossier than the mist around them. */
export const spatter = (b: Board, f: FeatureOf<'spatter'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  const flight = next() * 6.28;
  for (const [x, y] of places(b, next, f['per-cm2'])) {
    const radius = between(next, low, high, 2.4) / 2;
    const heading = flight + (next() - 0.5) * 2 * SPREAD;
    const tall = f['height-um'] * Math.min(1, 0.35 + (radius * 2) / high);
    blob(b, next, [x, y], radius, heading, tall);
    let away = radius * 3;
    for (let size = radius * 0.34; size > low * 0.2 && away < radius * 9; size *= 0.75) {
      away += radius * between(next, 0.8, 2);
      blob(b, next, [x + Math.cos(heading) * away, y + Math.sin(heading) * away], size, heading, tall * 0.5);
    }
  }
};
