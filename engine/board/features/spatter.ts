import type { FeatureOf } from '../../model/board.ts';
import { type Board, pour, raise, roughen } from '../field.ts';
import { between, ease, noise, type Random, random } from '../noise.ts';
import { places } from '../places.ts';
import { disc, type Point } from '../stamp.ts';

/** How far a drop is drawn out along its flight; most stay nearly round. */
const DRAWN_OUT = [1, 2.4] as const;
/** Drops of one pass fly one way, give or take this much, radians. */
const SPREAD = 0.35;

/** One drop that hit in flight, sank and flowed out: low in the middle of a large one, its foot wetting the mist round it. */
const blob = (b: Board, next: Random, at: Point, radius: number, heading: number, tall: number): void => {
  const long = between(next, ...DRAWN_OUT, 3);
  const id = Math.floor(next() * 1e6);
  const ux = Math.cos(heading);
  const uy = Math.sin(heading);
  const wets = between(next, 1.05, 1.5);
  // A fine one stands; a large one burst on landing and lies flat, out of round.
  const burst = Math.min(1, radius / 1.1) * between(next, 0.5, 1);
  const sunk = between(next, 0.1, 0.5) * burst;
  disc(b, at, radius * (long + 0.9), (i, _distance, dx, dy) => {
    const ahead = dx * ux + dy * uy;
    const u = ahead > 0 ? ahead / long : ahead;
    const v = dy * ux - dx * uy;
    const bent = radius * (0.12 + 0.14 * burst);
    const pu = u + bent * noise(u / (radius * 1.1) + 3.1, v / (radius * 1.1) + 1.7, id);
    const pv = v + bent * noise(u / (radius * 1.1) + 8.4, v / (radius * 1.1) + 5.2, id + 1);
    const angle = Math.hypot(pu, pv) / radius;
    const [cu, cv] = angle > 0 ? [pu / (radius * angle), pv / (radius * angle)] : [0, 0];
    const tongues = noise(cu * 2.1 + 9, cv * 2.1, id + 2) + 0.5 * noise(cu * 5 + 4, cv * 5, id + 3);
    const t = angle / (1 + burst * 0.1 * tongues);
    roughen(b, i, 0.02, 0.85 * ease(wets * 1.15, wets * 0.85, t));
    if (t >= 1.25) return;
    // Flowed out: a low lens that runs off to its foot without a wall, sunk where it dried last.
    const lens = Math.max(0, 1 - t * t) ** (1.15 + 0.5 * burst);
    const uneven = 1 + 0.14 * burst * noise(pu / (radius * 0.9), pv / (radius * 0.9), id + 4);
    const dome = lens * uneven * (1 - sunk * Math.exp(-((t * 2.1) ** 2))) * (1 - 0.45 * burst);
    raise(b, i, tall * dome);
    pour(b, i, tall * dome);
    roughen(b, i, 0.01, 0.95 * ease(1.1, 0.9, t));
  });
};

/** Drops spat by a nozzle: few large, very many fine, some with small ones thrown ahead; glossier than the mist around them. */
export const spatter = (b: Board, f: FeatureOf<'spatter'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  const flight = next() * 6.28;
  for (const [x, y] of places(b, next, f['per-cm2'] * 0.8)) {
    const radius = between(next, low, high, 3.4) / 2;
    const heading = flight + (next() - 0.5) * 2 * SPREAD;
    const tall = f['height-um'] * Math.min(1, 0.2 + (radius * 1.6) / high) * between(next, 0.25, 0.7);
    blob(b, next, [x, y], radius, heading, tall);
    if (radius * 2 < high * 0.3) continue;
    for (let n = Math.floor(between(next, 0, 8)); n > 0; n--) {
      const away = radius * between(next, 1.5, 6, 1.3);
      const aside = heading + between(next, -0.5, 0.5);
      const size = radius * between(next, 0.06, 0.3, 2);
      blob(b, next, [x + Math.cos(aside) * away, y + Math.sin(aside) * away], size, aside, tall * 0.3);
    }
  }
  for (const at of places(b, next, f['per-cm2'] * 5))
    blob(
      b,
      next,
      at,
      between(next, 0.05, Math.max(0.12, low * 0.45), 2),
      flight + (next() - 0.5),
      f['height-um'] * 0.12,
    );
};
