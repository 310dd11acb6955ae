import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scaleFilm, scatter } from '../field.ts';
import { blot, joined, remnant } from '../mask.ts';
import { between, ease, noise, type Random, random, rough } from '../noise.ts';
import { type Point, placed } from '../stamp.ts';

type DullSpot = FeatureOf<'dull-spot'>;
type Spot = { at: Point; reach: number; weight: number; edge: (x: number, y: number) => number };

/** A splash: the puddle, and what flew off it, finer the farther. */
const splash = (next: Random, center: Point, radius: number, from: number): Spot[] => {
  const spots: Spot[] = [
    { at: center, reach: radius * 2.6, weight: 1, edge: blot(center, radius * 0.85, from, 0.6, 1.35, 20) },
  ];
  for (let n = 0; n < 22; n++) {
    const heading = next() * 2 * Math.PI;
    const far = between(next, 0.95, 2.4, 1.4);
    const at: Point = [
      center[0] + Math.cos(heading) * radius * far,
      center[1] + Math.sin(heading) * radius * far,
    ];
    const size = radius * between(next, 0.03, 0.3, 3.2);
    const edge = blot(at, size, from + n, 0.22, between(next, 1, 1.5), (heading * 180) / Math.PI);
    spots.push({ at, reach: size * 2 + 2, weight: between(next, 0.5, 1), edge });
  }
  return spots;
};

/** Softened by spirit and dried again: thin parts of a rim of unequal height, and a skin that drew together inside. */
const melted = (b: Board, f: DullSpot, from: number, spots: readonly Spot[], radius: number): void => {
  everywhere(b, (i, x, y) => {
    let d = 1e9;
    let weight = 1;
    for (const spot of spots) {
      if (Math.abs(x - spot.at[0]) > spot.reach || Math.abs(y - spot.at[1]) > spot.reach) continue;
      const here = spot.edge(x, y);
      if (here < d) weight = spot.weight;
      d = joined(d, here, 1.6);
    }
    if (d > 3) return;
    const lies = 1 - ease(-0.5, 0.35, d);
    const share =
      weight * lies * (0.5 + 0.5 * ease(-radius * 0.7, -0.2, d) + 0.42 * rough(x / 6, y / 4.5, from + 44, 2));
    roughen(b, i, 0.2, Math.min(1, Math.max(0, f.strength * share)));
    scatter(b, i, 0.055 * f.strength * Math.max(0, share) ** 1.5);
    scaleFilm(b, i, 1 - 0.4 * f.strength * lies);
    const crest = remnant(x, y, 6, from + 40);
    // Steep outside, drawn out inward.
    const rim = Math.exp(-((d / (d > 0 ? 0.4 : 0.5 + 0.9 * crest)) ** 2)) * crest;
    const pucker =
      noise(x / 1.3 + 0.8 * noise(x / 3, y / 3, from + 43), y / 0.9, from + 41) * remnant(x, y, 9, from + 46);
    raise(b, i, f['rim-um'] * 0.8 * rim - Math.min(f['rim-um'], 30) * lies * (0.5 - 0.3 * pucker));
  });
};

/** Places that lost their shine, the reflection dying away in them; or a splash of spirit with its droplets. */
export const dullSpot = (b: Board, f: DullSpot, from: number): void => {
  const next = random(from);
  const center = placed(b, next, f.at);
  const radius = f['diameter-mm'] / 2;
  if (f.shape === 'splash') {
    melted(b, f, from, splash(next, center, radius, from), radius);
    return;
  }
  const spots: Spot[] = [
    { at: center, reach: radius * 3, weight: 1, edge: blot(center, radius * 0.88, from, 0.26, 1.08, 30) },
  ];
  for (let n = 0; n < 4; n++) {
    const heading = next() * 6.28;
    const away = radius * between(next, 1, 1.7);
    const at: Point = [center[0] + Math.cos(heading) * away, center[1] + Math.sin(heading) * away];
    const size = radius * between(next, 0.1, 0.5, 1.6);
    spots.push({
      at,
      reach: size * 4,
      weight: between(next, 0.35, 0.9),
      edge: blot(at, size, from + 9 + n, 0.4, 1.2, n * 50),
    });
  }
  everywhere(b, (i, x, y) => {
    let bright = 1;
    for (const { at, reach, weight, edge } of spots) {
      if (Math.abs(x - at[0]) > reach || Math.abs(y - at[1]) > reach) continue;
      const soft = reach * 0.2;
      bright *= 1 - weight * (1 - ease(-soft * 1.5, soft, edge(x, y)));
    }
    const share = (1 - bright) * (0.85 + 0.4 * rough(x / 6, y / 5, from + 4, 2));
    if (share <= 0) return;
    roughen(b, i, 0.2, Math.min(1, f.strength * share ** 1.5));
    scatter(b, i, 0.012 * f.strength * share);
    scaleFilm(b, i, 1 - 0.3 * f.strength * share);
  });
};
