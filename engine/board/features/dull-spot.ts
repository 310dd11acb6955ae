import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scaleFilm, scatter } from '../field.ts';
import { blot } from '../mask.ts';
import { between, ease, random } from '../noise.ts';
import { type Point, placed } from '../stamp.ts';

/** One place that lost its shine, or a splash of spirit with its droplets. */
export const dullSpot = (b: Board, f: FeatureOf<'dull-spot'>, from: number): void => {
  const next = random(from);
  const center = placed(b, next, f.at);
  const radius = f['diameter-mm'] / 2;
  const blots = [blot(center, radius * 0.9, from, 0.3, 1.15, 20)];
  if (f.shape === 'splash')
    for (let n = 0; n < 16; n++) {
      const heading = next() * 2 * Math.PI;
      const reach = radius * between(next, 1.1, 2.3);
      const drop: Point = [center[0] + Math.cos(heading) * reach, center[1] + Math.sin(heading) * reach];
      blots.push(
        blot(drop, radius * between(next, 0.05, 0.2, 2), from + n, 0.12, 1.3, (heading * 180) / Math.PI),
      );
    }
  const soft = f.shape === 'splash' || f['rim-um'] > 0 ? 0.3 : Math.min(2.5, radius * 0.3);
  everywhere(b, (i, x, y) => {
    let d = 1e9;
    for (const edge of blots) d = Math.min(d, edge(x, y));
    if (d > radius) return;
    const share = 1 - ease(-soft, soft, d);
    roughen(b, i, 0.21, f.strength * share);
    scatter(b, i, 0.02 * f.strength * share);
    scaleFilm(b, i, 1 - 0.4 * f.strength * share);
    const rim = Math.exp(-((d / Math.max(0.45, soft * 0.8)) ** 2));
    raise(b, i, f['rim-um'] * rim - Math.min(f['rim-um'], 30) * 0.8 * share);
  });
};
