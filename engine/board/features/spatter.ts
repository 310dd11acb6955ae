import type { FeatureOf } from '../../model/board.ts';
import { type Board, pour, raise, roughen } from '../field.ts';
import { joined } from '../mask.ts';
import { between, ease, noise, type Random, random } from '../noise.ts';
import { places } from '../places.ts';
import { disc, type Point } from '../stamp.ts';

/** How far a drop is drawn out along its flight; most stay nearly round. */
const DRAWN_OUT = [1, 2.4] as const;
/** Drops of one pass fly one way, give or take this much, radians. */
const SPREAD = 0.35;

/**
 * One drop that hit in flight and flowed out: a fine one stands round, a large one came as two or three and lies low;
 * its foot wets the mist round it.
 */
const blob = (b: Board, next: Random, at: Point, radius: number, heading: number, tall: number): void => {
  const long = between(next, ...DRAWN_OUT, 3);
  const id = Math.floor(next() * 1e6);
  const ux = Math.cos(heading);
  const uy = Math.sin(heading);
  const wets = between(next, 1.05, 1.5);
  const large = Math.min(1, radius / 1.2);
  const low = 1 - large * between(next, 0.1, 0.5);
  const lobes = Array.from({ length: 1 + Math.floor(next() * 3 * large) }, (_, n) => ({
    u: n === 0 ? 0 : radius * between(next, -1.1, 1.1),
    v: n === 0 ? 0 : radius * between(next, -0.7, 0.7),
    r: radius * (n === 0 ? 1 : between(next, 0.3, 0.75)),
  }));
  disc(b, at, radius * (long + 1.9), (i, _distance, dx, dy) => {
    const ahead = dx * ux + dy * uy;
    const u = ahead > 0 ? ahead / long : ahead;
    const v = dy * ux - dx * uy;
    const bent = radius * 0.16;
    const pu = u + bent * noise(u / (radius * 1.3) + 3.1, v / (radius * 1.3) + 1.7, id);
    const pv = v + bent * noise(u / (radius * 1.3) + 8.4, v / (radius * 1.3) + 5.2, id + 1);
    let out = 1e9;
    for (const lobe of lobes) out = joined(out, Math.hypot(pu - lobe.u, pv - lobe.v) - lobe.r, radius * 0.7);
    const t = Math.max(0, 1 + out / radius);
    roughen(b, i, 0.03, 0.75 * ease(wets * 1.2, wets * 0.75, t));
    if (t >= 1.2) return;
    // No wall and no edge: it runs off to a thin foot, a little uneven on top.
    const lens = Math.max(0, 1 - (t / 1.15) ** 2) ** 1.6;
    const dome = low * lens * (1 + 0.12 * noise(pu / radius, pv / radius, id + 2));
    raise(b, i, tall * dome);
    pour(b, i, tall * dome);
    roughen(b, i, 0.016, 0.9 * ease(1.1, 0.7, t));
  });
};

/**
 * Drops spat by a nozzle: few large, very many fine, some with small ones thrown ahead; glossier than the mist around
 * them.
 */
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
