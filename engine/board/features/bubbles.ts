import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, roughen, scaleFilm, scatter, stain } from '../field.ts';
import { between, ease, noise, type Random, random } from '../noise.ts';
import { places } from '../places.ts';
import { disc, type Point } from '../stamp.ts';

type Bubbles = FeatureOf<'bubbles'>;

/** The rim of a bubble bends light away from what lies below. */
const RIM_SHADE = [0.14, 0.14, 0.14] as const;
/** How tall a dome stands, as a share of its radius. */
const TALL = 0.18;
/** Share of them that rose in a cluster, and how many small ones come with one. */
const CLUSTERED = 0.22;
const MOST_BESIDE = 6;

/** Places and widths: most alone, some with a cluster of fine ones beside them. */
const risen = (b: Board, f: Bubbles, next: Random): { point: Point; radius: number }[] => {
  const [low, high] = f['diameter-mm'];
  return places(b, next, f['per-cm2'] / (1 + CLUSTERED * MOST_BESIDE * 0.4), f.along).flatMap((point) => {
    const radius = between(next, low, high, 2.4) / 2;
    const all = [{ point, radius }];
    if (next() > CLUSTERED) return all;
    for (let n = between(next, 1, MOST_BESIDE, 1.4); n > 0; n--) {
      const small = (low / 2) * between(next, 0.5, 1.5, 2);
      const [way, away] = [next() * 6.28, (radius + small) * between(next, 1, 2.6, 1.6)];
      all.push({ point: [point[0] + Math.cos(way) * away, point[1] + Math.sin(way) * away], radius: small });
    }
    return all;
  });
};

/** Domes of air under a skin, many small to each large one, and the ragged pits where they broke. */
export const bubbles = (b: Board, f: Bubbles, from: number): void => {
  const next = random(from);
  const domes = new Float32Array(b.height.length);
  for (const { point, radius } of risen(b, f, next)) {
    const open = next() < f.burst;
    // Some stand full, some have sunk as the skin gave.
    const sunk = between(next, 0, 1);
    const tall = radius * 1000 * TALL * between(next, 0.75, 1.1) * (1 - 0.7 * sunk);
    const long = between(next, 1, 1.35, 2);
    // The coat flowed up round it before it set: no border, a slope that runs out.
    const slope = between(next, 1.15, 1.5) + 0.7 * sunk;
    const off = between(next, 0, 0.3);
    const turn = next() * Math.PI;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    // A pit is torn on the side where the skin gave, and has flowed shut more or less.
    const gave = next() * 6.28;
    const healed = between(next, 0, 0.8);
    const id = Math.floor(next() * 1e6);
    disc(b, point, radius * 2, (i, _d, dx, dy) => {
      const u = (dx * c + dy * s) / long;
      const v = dy * c - dx * s;
      const bent = 0.16 * noise((dx / radius) * 0.8 + 2, (dy / radius) * 0.8, id + 2);
      const around = open ? Math.max(0, Math.cos(Math.atan2(dy, dx) - gave)) : 0;
      const torn = open
        ? 0.22 * noise(dx / radius + 4, dy / radius, id) +
          around * 0.14 * noise((dx / radius) * 2.6, (dy / radius) * 2.6, id + 1)
        : bent;
      const t = Math.hypot(u, v) / (radius * (1 + torn));
      const lip = open ? (1 - healed) * (0.4 + 1.3 * around) : 0;
      const foot = 0.13 * tall * lip * Math.exp(-(((t - 1.08) / (0.2 + 0.3 * healed)) ** 2));
      if (t >= 1) {
        raise(b, i, foot);
        return;
      }
      if (open) {
        raise(b, i, foot * 2 - Math.min(tall, 45) * (1 - 0.6 * healed) * (1 - t * t));
        scaleFilm(b, i, 0.3 + 0.5 * healed);
        scatter(b, i, 0.05 * t * (1 - healed));
      } else {
        const crown =
          1 +
          0.25 * (0.3 + sunk) * noise((dx / radius) * 0.9, (dy / radius) * 0.9 + 6, id + 3) +
          off * (u / radius) * (1 - t);
        domes[i] = Math.max(domes[i]!, tall * crown * (1 - t * t) ** slope);
        const air = ease(1, 0.8, t);
        b.haze[i] = Math.max(b.haze[i]!, (0.012 + 0.07 * (1 - 0.7 * sunk) * t ** 6) * air);
        stain(b, i, RIM_SHADE, (1 - 0.7 * sunk) * t ** 3 * air);
        roughen(b, i, 0.014 + 0.04 * sunk, 0.9 * air);
      }
    });
  }
  for (let i = 0; i < domes.length; i++) raise(b, i, domes[i]!);
};
