import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scaleFilm, scatter } from '../field.ts';
import { blot } from '../mask.ts';
import { between, ease, noise, random } from '../noise.ts';
import { type Point, placed } from '../stamp.ts';

/** One place that lost its shine, or a splash of spirit with its droplets. */
export const dullSpot = (b: Board, f: FeatureOf<'dull-spot'>, from: number): void => {
  const next = random(from);
  const center = placed(b, next, f.at);
  const radius = f['diameter-mm'] / 2;
  const splash = f.shape === 'splash';
  const blots = [
    {
      at: center,
      reach: radius * 2.6,
      edge: blot(center, radius * 0.9, from, splash ? 0.42 : 0.2, splash ? 1.3 : 1.1, 20),
    },
  ];
  if (splash)
    for (let n = 0; n < 16; n++) {
      const heading = next() * 2 * Math.PI;
      const reach = radius * between(next, 1.1, 2.3);
      const drop: Point = [center[0] + Math.cos(heading) * reach, center[1] + Math.sin(heading) * reach];
      const size = radius * between(next, 0.05, 0.2, 2);
      blots.push({
        at: drop,
        reach: size * 2 + 2,
        edge: blot(drop, size, from + n, 0.12, 1.3, (heading * 180) / Math.PI),
      });
    }
  const soft = splash || f['rim-um'] > 0 ? 0.3 : radius * 0.42;
  everywhere(b, (i, x, y) => {
    let d = 1e9;
    for (const { at, reach, edge } of blots)
      if (Math.abs(x - at[0]) < reach && Math.abs(y - at[1]) < reach) d = Math.min(d, edge(x, y));
    if (d > radius) return;
    const share = 1 - ease(-soft, soft, d);
    roughen(b, i, 0.21, f.strength * share);
    scatter(b, i, 0.02 * f.strength * share);
    scaleFilm(b, i, 1 - 0.4 * f.strength * share);
    if (f['rim-um'] === 0) return;
    // Softened and dried again: a rim of unequal height, and a skin that drew together inside.
    const rim =
      Math.exp(-((d / Math.max(0.45, soft * 0.8)) ** 2)) *
      (0.35 + 0.9 * ease(-0.4, 0.5, noise(x / 6, y / 6, from + 40)));
    const puckered =
      noise(x / 1.1 + noise(x / 3, y / 3, from + 43), y / 0.8, from + 41) +
      0.6 * noise(x / 0.5, y / 0.5, from + 42);
    raise(b, i, f['rim-um'] * rim - Math.min(f['rim-um'], 30) * share * (0.8 - 0.28 * puckered));
  });
};
