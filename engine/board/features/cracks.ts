import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter, tint } from '../field.ts';
import { remnant } from '../mask.ts';
import { between, cells, ease, noise, random, rough } from '../noise.ts';
import { cover, type Point, stroke, wander } from '../stamp.ts';

type Cracks = FeatureOf<'cracks'>;
const SHADE = [0.02, 0.017, 0.014] as const;
const DIRT = [0.022, 0.014, 0.008] as const;

/** Straight checks, often across the grain, in families of the same direction. */
const coldCheck = (b: Board, f: Cracks, from: number): void => {
  const next = random(from);
  const half = f['width-um'] / 2000;
  const crack = (x: number, y: number, heading: number, length: number) =>
    stroke(b, wander(next, [x, y], heading, length, 0.07, 0.7), half + b.pitch, (i, d, run) => {
      const share = Math.max(0, cover(b, half - d, half * 2)) * ease(0, 2, Math.min(run, length - run) + 0.3);
      raise(b, i, -22 * share);
      scatter(b, i, 0.3 * share);
    });
  for (let x = -0.1 * b.widthMm; x < b.widthMm; x += f['spacing-mm'] * between(next, 0.4, 1.6)) {
    const length = between(next, 0.25, 1.1) * b.heightMm;
    crack(x, between(next, -0.2, 0.7) * b.heightMm, Math.PI / 2 - 0.16 + between(next, -0.06, 0.06), length);
    if (next() < 0.3) crack(x, next() * b.heightMm, between(next, -0.1, 0.25), between(next, 2, 9));
  }
};

/**
 * Cracks as they come one after the other: long ones lead, later ones start from them at a right angle and
 * end where they meet another, or give out. Returns the distance to the nearest, mm, `far` where none is near.
 */
const grown = (b: Board, spacing: number, far: number, from: number, least: number): Float32Array => {
  const next = random(from);
  const near = new Float32Array(b.height.length).fill(far);
  const step = Math.max(0.25, b.pitch);
  const columns = Math.ceil(b.widthMm / step);
  const rows = Math.ceil(b.heightMm / step);
  const owner = new Int32Array(columns * rows);
  const roots: { at: Point; heading: number; age: number }[] = [];
  let count = 0;
  const grow = (start: Point, heading: number, length: number, age: number) => {
    count++;
    let [x, y] = start;
    let direction = heading;
    const points: Point[] = [start];
    let entered = false;
    let rooted = spacing * between(next, 0.3, 1.3);
    let side = next() < 0.5 ? 1 : -1;
    for (let run = 0; run < length; run += step) {
      direction +=
        (noise(x / (spacing * 0.5), y / (spacing * 0.5), from + 5) * 0.5 + between(next, -0.22, 0.22)) *
        step ** 0.5;
      direction += (heading - direction) * 0.12;
      x += Math.cos(direction) * step;
      y += Math.sin(direction) * step;
      points.push([x, y]);
      const [c, r] = [Math.floor(x / step), Math.floor(y / step)];
      if (c < 0 || r < 0 || c >= columns || r >= rows) {
        if (entered) break;
        continue;
      }
      entered = true;
      const met = owner[r * columns + c]!;
      if (met !== 0 && met !== count && run > step * 3) break;
      owner[r * columns + c] = count;
      if (run < rooted) continue;
      rooted = run + spacing * between(next, 0.5, 1.7);
      side = next() < 0.75 ? -side : side;
      roots.push({ at: [x, y], heading: direction + side * between(next, 1.3, 1.8), age: age + 1 });
    }
    stroke(b, points, far, (i, d) => {
      // Younger cracks are finer: they count as farther off.
      const finer = d + age * least;
      if (finer < near[i]!) near[i] = finer;
    });
  };
  const lead = next() * Math.PI;
  const longest = Math.hypot(b.widthMm, b.heightMm) * 1.2;
  for (let across = -longest / 2; across < longest / 2; across += spacing * between(next, 1.1, 3)) {
    const at: Point = [
      b.widthMm / 2 - Math.cos(lead) * longest * 0.5 - Math.sin(lead) * across,
      b.heightMm / 2 - Math.sin(lead) * longest * 0.5 + Math.cos(lead) * across,
    ];
    grow(at, lead, longest, 0);
  }
  for (let n = 0; n < roots.length && n < 700; n++) {
    const { at, heading, age } = roots[n]!;
    if (age <= 2)
      grow(at, heading, spacing * (next() < 0.15 ? between(next, 0.4, 1) : between(next, 2, 9)), age);
  }
  return near;
};

/** Hairlines and mud: grown cracks, hair-fine with a lit lip, or wide gaps between islands with curled rims. */
const net = (b: Board, f: Cracks, from: number): void => {
  const s = f['spacing-mm'];
  const mud = f.pattern === 'mud';
  const half = f['width-um'] / 2000;
  const far = mud ? Math.min(s * 0.4, 1.2) : half + b.pitch * 2.5;
  const near = grown(b, s, far, from, half * 0.22);
  everywhere(b, (i, x, y) => {
    const d = near[i]!;
    if (d >= far) return;
    // One crack gapes, the next is a hairline; the film curls along part of one side only.
    const uneven = 0.8 + 0.75 * noise(x / 6, y / 6, from + 3) + 0.4 * rough(x / 1.6, y / 1.6, from + 4, 2);
    const curled = remnant(x, y, mud ? 5 : 3, from + 8);
    const gap = Math.max(0, cover(b, half * Math.max(0.12, uneven) - d, half * 2));
    const lip = mud
      ? (25 + 50 * curled) * Math.exp(-d / (s * 0.12))
      : 5 * curled * Math.exp(-(((d - half - b.pitch) / (b.pitch * (0.8 + curled))) ** 2));
    raise(b, i, lip * (1 - gap) - (mud ? 90 : 30) * gap);
    tint(b, i, SHADE, gap * (mud ? 0.85 : 0.7));
    if (!mud) scatter(b, i, 0.035 * gap);
    roughen(b, i, 0.3, gap);
  });
};

/** Scales of old resin: plates of all sizes, rounded off to dirty furrows, with fine cracks across them. */
const scales = (b: Board, f: Cracks, from: number): void => {
  const s = f['spacing-mm'];
  const half = f['width-um'] / 2000;
  const cell = { first: 0, second: 0, id: 0 };
  const fine = grown(b, s * 1.1, b.pitch * 1.6, from + 11, 0.02);
  everywhere(b, (i, x, y) => {
    const wide = 1.5 + 0.5 * noise(x / 22, y / 22, from + 6);
    const bend =
      0.2 * rough((2 * x) / s, (2 * y) / s, from + 1, 2) + 0.35 * noise(x / (s * 2), y / (s * 2), from + 7);
    cells(x / (s * wide) + bend, y / s - bend, from, cell);
    const inside = (cell.second - cell.first) * s * 0.5;
    const uneven = 0.8 + 0.7 * rough(x / 3, y / 3, from + 3, 1);
    const gap = 1 - ease(half * 0.2 * uneven, half * 1.5 * uneven, inside);
    const plate = 75 * ease(0, s * 0.3, inside) + 5 * rough(x / 2.6, y / 2.6, from + 4, 1);
    const hair = Math.max(0, cover(b, 0.03 - fine[i]!, 0.06)) * (1 - gap);
    raise(b, i, plate * (1 - gap) - 90 * gap - 16 * hair);
    tint(b, i, DIRT, 0.92 * gap + 0.5 * hair);
    roughen(b, i, 0.3, gap);
  });
};

/** Broken film. */
export const cracks = (b: Board, f: Cracks, from: number): void => {
  if (f.pattern === 'cold-check') coldCheck(b, f, from);
  else if (f.pattern === 'alligator') scales(b, f, from);
  else net(b, f, from);
};
