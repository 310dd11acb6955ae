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
    // Some stand full, some have sunk as the skin gave.
    const sunk = between(next, 0, 1);
    const tall = radius * 1000 * TALL * between(next, 0.75, 1.1) * (1 - 0.6 * sunk);
    const long = between(next, 1, 1.25, 2);
    const turn = next() * Math.PI;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    // A pit is torn on the side where the skin gave, and has flowed shut more or less.
    const gave = next() * 6.28;
    const healed = between(next, 0, 0.8);
    const id = Math.floor(next() * 1e6);
    disc(b, point, radius * 2, (i, _d, dx, dy) => {
      const u = (dx * c + dy * s) / long;
      const v = dy * c - dx * s;
      const bent = 0.09 * noise((dx / radius) * 0.8 + 2, (dy / radius) * 0.8, id + 2);
      const around = open ? Math.max(0, Math.cos(Math.atan2(dy, dx) - gave)) : 0;
      const torn = open
        ? 0.22 * noise(dx / radius + 4, dy / radius, id) +
          around * 0.14 * noise((dx / radius) * 2.6, (dy / radius) * 2.6, id + 1)
        : bent;
      const t = Math.hypot(u, v) / (radius * (1 + torn));
      const lip = open ? (1 - healed) * (0.4 + 1.3 * around) : 1;
      const foot = 0.13 * tall * lip * Math.exp(-(((t - 1.08) / (open ? 0.2 + 0.3 * healed : 0.3)) ** 2));
      if (t >= 1) {
        raise(b, i, foot);
        return;
      }
      if (open) {
        raise(b, i, foot * 2 - Math.min(tall, 45) * (1 - 0.6 * healed) * (1 - t * t));
        scaleFilm(b, i, 0.3 + 0.5 * healed);
        scatter(b, i, 0.05 * t * (1 - healed));
      } else {
        const crown = 1 + 0.3 * sunk * noise((dx / radius) * 0.9, (dy / radius) * 0.9 + 6, id + 3);
        domes[i] = Math.max(domes[i]!, tall * crown * (1 - t ** (2 + sunk)));
        b.haze[i] = Math.max(b.haze[i]!, 0.008 + 0.035 * (1 - sunk) * t ** 6);
        stain(b, i, RIM_SHADE, (1 - 0.7 * sunk) * t ** 5);
        roughen(b, i, 0.016 + 0.03 * sunk, 0.9);
      }
    });
  }
  for (let i = 0; i < domes.length; i++) raise(b, i, domes[i]!);
};
