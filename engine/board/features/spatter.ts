import type { FeatureOf } from '../../model/board.ts';
import { type Board, pour, raise, roughen } from '../field.ts';
import { between, noise, type Random, random } from '../noise.ts';
import { places } from '../places.ts';
import { disc, type Point } from '../stamp.ts';

/** How far a drop is drawn out along its flight; most stay nearly round. */
const DRAWN_OUT = [1, 1.7] as const;
/** Drops of one pass fly one way, give or take this much, radians. */
const SPREAD = 0.5;

/** One drop that hit in flight and settled: a smooth flat cushion, a little longer in front. */
const blob = (b: Board, next: Random, at: Point, radius: number, heading: number, tall: number): void => {
  const long = between(next, ...DRAWN_OUT, 2);
  const id = Math.floor(next() * 1e6);
  const ux = Math.cos(heading);
  const uy = Math.sin(heading);
  disc(b, at, radius * (long + 0.5), (i, _distance, dx, dy) => {
    const ahead = dx * ux + dy * uy;
    const u = ahead > 0 ? ahead / long : ahead;
    const v = dy * ux - dx * uy;
    const lobes = 1 + 0.16 * noise((u / radius) * 0.9 + 3.1, (v / radius) * 0.9 + 1.7, id);
    const t = Math.hypot(u, v) / (radius * lobes);
    if (t >= 1) return;
    const rise = tall * (1 - t * t) ** 0.75;
    raise(b, i, rise);
    pour(b, i, rise);
    roughen(b, i, 0.01, 0.95);
  });
};

/** Drops spat by a nozzle: cushions of all sizes, a few with small ones thrown ahead; glossier than the mist around them. */
export const spatter = (b: Board, f: FeatureOf<'spatter'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  const flight = next() * 6.28;
  for (const [x, y] of places(b, next, f['per-cm2'])) {
    const radius = between(next, low, high, 3) / 2;
    const heading = flight + (next() - 0.5) * 2 * SPREAD;
    const tall = f['height-um'] * Math.min(1, 0.35 + (radius * 2) / high);
    blob(b, next, [x, y], radius, heading, tall);
    if (radius * 2 < high * 0.3) continue;
    for (let n = Math.floor(between(next, 0, 6)); n > 0; n--) {
      const away = radius * between(next, 1.4, 4.5);
      const aside = heading + between(next, -0.7, 0.7);
      const size = radius * between(next, 0.08, 0.3, 1.6);
      blob(b, next, [x + Math.cos(aside) * away, y + Math.sin(aside) * away], size, aside, tall * 0.4);
    }
  }
};
