import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise } from '../field.ts';
import { blot, joined } from '../mask.ts';
import { between, ease, noise, random, rough } from '../noise.ts';
import { disc, type Point, stroke, wander } from '../stamp.ts';

type Telegraphing = FeatureOf<'telegraphing'>;
type Shape = (x: number, y: number) => number;

/** Old chips run together, their broken edge steep in places and sanded soft in others: outside high, inside low. */
const chips = (b: Board, f: Telegraphing, from: number): Shape => {
  const next = random(from);
  const radius = f['size-mm'] / 2;
  const parts = Array.from({ length: 6 }, (_, n) => {
    const near = n < 3;
    const center: Point = near
      ? [
          b.widthMm * 0.46 + between(next, -1, 1) * radius * (n === 0 ? 0.2 : 1.2),
          b.heightMm * 0.46 + between(next, -0.6, 0.6) * radius * (n === 0 ? 0.3 : 1),
        ]
      : [between(next, 0.05, 0.95) * b.widthMm, between(next, 0.08, 0.92) * b.heightMm];
    const size = radius * (n === 0 ? 1 : between(next, 0.3, 0.75, 1.5));
    return { center, reach: size * 2.2 + 5, edge: blot(center, size, from + n, 0.42, 1.4, next() * 180) };
  });
  return (x, y) => {
    let d = 1e9;
    for (const { center, reach, edge } of parts)
      if (Math.abs(x - center[0]) < reach && Math.abs(y - center[1]) < reach) d = joined(d, edge(x, y), 2);
    if (d > 9) return 0;
    const soft = 0.9 + 1.5 * ease(-0.45, 0.5, noise(x / 15, y / 15, from + 31));
    // The film drew back a little from the high side.
    const lip = 0.05 * Math.exp(-(((d - soft) / (soft * 0.8)) ** 2));
    return f['height-um'] * (lip - ease(soft, -soft, d));
  };
};

/** What else lay below: a filled screw hole that shrank, a dent, an old scratch. */
const leftovers = (b: Board, f: Telegraphing, from: number): void => {
  const next = random(from + 60);
  const um = f['height-um'];
  const hole = between(next, 2.6, 3.6);
  disc(
    b,
    [b.widthMm * between(next, 0.78, 0.9), b.heightMm * between(next, 0.2, 0.4)],
    hole * 2,
    (i, d, dx, dy) => {
      const t = d / hole + 0.05 * noise(dx / 4, dy / 4, from);
      raise(
        b,
        i,
        um * (0.08 * Math.exp(-(((t - 1.2) / 0.3) ** 2)) - 0.7 * Math.exp(-(t ** 3)) * (0.8 + 0.2 * t * t)),
      );
    },
  );
  const wide = between(next, 2, 4);
  disc(
    b,
    [b.widthMm * between(next, 0.15, 0.3), b.heightMm * between(next, 0.7, 0.85)],
    wide * 2,
    (i, _d, dx, dy) => {
      const t = Math.hypot(dx * 0.7 + dy * 0.3, dy) / wide;
      raise(b, i, -um * 0.8 * Math.exp(-((t * 1.3) ** 2)));
    },
  );
  const length = b.widthMm * 0.55;
  const line = wander(next, [b.widthMm * 0.32, b.heightMm * 0.92], -0.42, length, 0.06, 0.8);
  stroke(b, line, 1.6, (i, d, run) => {
    const ends = ease(0, 8, Math.min(run, length - run)) * (0.6 + 0.5 * noise(run / 6, 1, from));
    raise(b, i, -um * 0.3 * ends * Math.exp(-((d / 0.42) ** 2)));
  });
};

const joint = (b: Board, f: Telegraphing): Shape => {
  const um = f['height-um'];
  return (x, y) => {
    const d = y - b.heightMm * 0.5 - 0.05 * (x - b.widthMm / 2);
    return -um * Math.exp(-((d / 0.7) ** 2)) - um * 0.5 * ease(-0.4, 0.4, d);
  };
};

const ring = (b: Board, f: Telegraphing): Shape => {
  const um = f['height-um'];
  return (x, y) => {
    const d = Math.hypot(x - b.widthMm * 0.48, y - b.heightMm * 0.5) - f['size-mm'];
    return um * Math.exp(-((d / 1.1) ** 2)) - um * 0.4 * (1 - ease(-0.6, 0.6, d));
  };
};

const dents = (b: Board, f: Telegraphing, from: number): Shape => {
  const next = random(from);
  const faults = Array.from({ length: 5 }, () => ({
    x: between(next, 0.05, 0.95) * b.widthMm,
    y: between(next, 0.08, 0.92) * b.heightMm,
    radius: f['size-mm'] * between(next, 0.07, 0.3),
  }));
  return (x, y) => {
    let sum = 0;
    for (const dent of faults)
      sum -= 1.6 * Math.exp(-((x - dent.x) ** 2 + (y - dent.y) ** 2) / dent.radius ** 2);
    return f['height-um'] * Math.max(-1.6, sum);
  };
};

/** Relief of what lies below, rounded by the film; color and sheen stay even. */
export const telegraphing = (b: Board, f: Telegraphing, from: number): void => {
  const shapes: Readonly<Record<string, (b: Board, f: Telegraphing, from: number) => Shape>> = {
    chips,
    joint,
    ring,
  };
  const shape = (shapes[f.fault] ?? dents)(b, f, from);
  everywhere(b, (i, x, y) => {
    raise(b, i, shape(x, y) + 0.6 * rough(x / 4, y / 4, from + 9, 2));
  });
  if (f.fault === 'chips') leftovers(b, f, from);
};
