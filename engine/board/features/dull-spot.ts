import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scaleFilm, scatter } from '../field.ts';
import { blot, joined, remnant, settled } from '../mask.ts';
import { between, ease, noise, type Random, random, rough } from '../noise.ts';
import { type Point, placed } from '../stamp.ts';

/** How dull the film is where it sank in. */
const DULL = 0.13;

type DullSpot = FeatureOf<'dull-spot'>;
type Spot = {
  at: Point;
  reach: number;
  weight: number;
  size: number;
  edge: (x: number, y: number) => number;
};

/** Dulls the film; pores are duller already. */
const blunt = (b: Board, i: number, roughness: number, share: number): void => {
  if (b.roughness[i]! < roughness) roughen(b, i, roughness, share);
};

/** A drop as it lies: nearly round, drawn out a little the way it flew. */
const round = ([cx, cy]: Point, radius: number, heading: number, long: number, id: number) => {
  const [c, s] = [Math.cos(heading), Math.sin(heading)];
  return (x: number, y: number): number => {
    const [u, v] = [((x - cx) * c + (y - cy) * s) / long, (y - cy) * c - (x - cx) * s];
    return Math.sqrt(u * u + v * v) - radius * (1 + 0.09 * noise(u / radius + 4, v / radius, id));
  };
};

/** A splash: where it fell, a run that it drew from there, and what flew off, finer the farther. */
const splash = (next: Random, center: Point, radius: number, from: number): Spot[] => {
  const spots: Spot[] = [];
  const add = (at: Point, size: number, weight: number, heading: number, long: number) => {
    const edge = round(at, size, heading, long, from + spots.length);
    spots.push({ at, reach: size * long * 1.3 + 3, weight, size, edge });
  };
  const flew = between(next, -0.5, 0.3);
  add(center, radius * 0.62, 1, flew, 1.25);
  // It ran on and left less and less.
  let [x, y] = center;
  for (let n = 0; n < 7; n++) {
    const on = flew + between(next, -0.5, 0.5);
    const step = radius * between(next, 0.22, 0.4);
    [x, y] = [x + Math.cos(on) * step, y + Math.sin(on) * step];
    add(
      [x, y],
      radius * (0.5 - 0.055 * n) * between(next, 0.7, 1.1),
      1 - 0.05 * n,
      on,
      between(next, 1, 1.5),
    );
  }
  for (let n = 0; n < 24; n++) {
    const heading = next() < 0.65 ? flew + between(next, -0.8, 0.8) : next() * 2 * Math.PI;
    const far = between(next, 0.85, 2.3, 1.3);
    const at: Point = [
      center[0] + Math.cos(heading) * radius * far,
      center[1] + Math.sin(heading) * radius * far,
    ];
    add(at, radius * between(next, 0.03, 0.22, 2), between(next, 0.75, 1), heading, between(next, 1, 1.3));
  }
  return spots;
};

/**
 * Softened by spirit and dried again: thin parts of a rim of unequal height, and a skin that curdled and drew together
 * inside.
 */
const melted = (b: Board, f: DullSpot, from: number, spots: readonly Spot[], radius: number): void => {
  everywhere(b, (i, x, y) => {
    let d = 1e9;
    let [weight, size] = [1, radius];
    for (const spot of spots) {
      if (Math.abs(x - spot.at[0]) > spot.reach || Math.abs(y - spot.at[1]) > spot.reach) continue;
      const here = spot.edge(x, y);
      if (here < d) [weight, size] = [spot.weight, spot.size];
      d = joined(d, here, 1.6);
    }
    if (d > 5) return;
    const strays = Math.min(1, size / 5);
    d +=
      strays *
      (0.9 * noise(x / 3.4, y / 3.4, from + 50) +
        0.16 * noise(x / 1.1, y / 1.1, from + 51) +
        0.5 * noise(x / 5, y / 4.2, from + 53));
    if (d > 3) return;
    // Where it only stood a moment its border is lost; where it dried last it is sharp.
    const kept = remnant(x, y, 11, from + 47);
    const lies = 1 - ease(-0.35 - Math.min(2.6, 0.55 * size) * (1 - kept), 0.3, d);
    const cloud = rough(x / 7, y / 6, from + 44, 2);
    const curdled = rough(x / 1.5, y / 1.4, from + 48, 2);
    const held = settled(x, y, from + 52);
    const share = weight * lies * Math.max(0.08, 0.5 + 0.85 * cloud + 0.3 * curdled) * held;
    blunt(b, i, 0.17, Math.min(1, f.strength * share));
    scatter(b, i, 0.075 * f.strength * share ** 1.5 * (0.7 + 0.6 * curdled + 0.5 * ease(-2.4, -0.2, d)));
    scaleFilm(b, i, 1 - 0.4 * f.strength * lies);
    const crest = remnant(x, y, 6, from + 40) * (0.4 + 0.6 * kept) * Math.min(1, 0.3 + size / 7);
    // Steep outside, drawn out inward.
    const rim = Math.exp(-((d / (d > 0 ? 0.4 : 0.45 + 0.9 * crest)) ** 2)) * crest;
    const pucker =
      noise(x / 1.3 + 0.8 * noise(x / 3, y / 3, from + 43), y / 0.9, from + 41) * remnant(x, y, 9, from + 46);
    raise(
      b,
      i,
      f['rim-um'] * 0.8 * rim - Math.min(f['rim-um'], 30) * lies * (0.4 - 0.34 * pucker - 0.1 * curdled),
    );
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
    {
      at: center,
      reach: radius * 3,
      weight: 1,
      size: radius,
      edge: blot(center, radius * 0.9, from, 0.34, 1.2, 24),
    },
  ];
  for (let n = 0; n < 4; n++) {
    const heading = next() * 6.28;
    const away = radius * between(next, 1.35, 2.4);
    const at: Point = [center[0] + Math.cos(heading) * away, center[1] + Math.sin(heading) * away];
    const size = radius * between(next, 0.1, 0.34, 1.6);
    spots.push({
      at,
      reach: size * 4,
      weight: between(next, 0.3, 0.7),
      size,
      edge: blot(at, size, from + 9 + n, 0.4, 1.2, n * 50),
    });
  }
  const turn = between(next, -0.5, 0.5);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  everywhere(b, (i, x, y) => {
    let bright = 1;
    for (const { at, reach, weight, edge } of spots) {
      if (Math.abs(x - at[0]) > reach || Math.abs(y - at[1]) > reach) continue;
      const soft = reach * 0.17;
      bright *= 1 - weight * (1 - ease(-soft * 1.5, soft, edge(x, y)));
    }
    if (bright === 1) return;
    // What was sanded below shows in the sunken coat: its lines, and the grain of the filler.
    const [u, v] = [x * c + y * s, y * c - x * s];
    const cloud = rough(x / 8, y / 6, from + 4, 3);
    const lines =
      0.5 * noise(u / 9, (v + cloud) / 0.4, from + 5) +
      0.4 * noise((u + v) / 7, (v - 0.6 * u + 2 * cloud) / 0.6, from + 6);
    const speckle = 1.5 * rough(x / 0.6 + cloud, y / 0.6, from + 7, 2) + 0.4 * cloud;
    const sunk = (1 - bright) * (0.95 + 0.5 * cloud);
    const share = Math.min(1, Math.max(0, sunk + 0.16 * Math.min(sunk, bright) * (lines + speckle)));
    blunt(b, i, DULL * Math.exp(0.24 * lines + 0.26 * speckle), Math.min(1, f.strength * share));
    raise(b, i, share * (0.7 * lines + 0.6 * speckle));
    scaleFilm(b, i, 1 - 0.3 * f.strength * share);
  });
};
