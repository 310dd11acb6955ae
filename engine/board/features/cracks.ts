import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter, tint } from '../field.ts';
import { remnant } from '../mask.ts';
import { between, ease, noise, random, rough } from '../noise.ts';
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
    let stopped = false;
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
        stopped = entered;
        if (entered) break;
        continue;
      }
      entered = true;
      const met = owner[r * columns + c]!;
      stopped = met !== 0 && met !== count && run > step * 3;
      if (stopped) break;
      owner[r * columns + c] = count;
      if (run < rooted) continue;
      rooted = run + spacing * between(next, 0.5, 1.7);
      side = next() < 0.75 ? -side : side;
      roots.push({ at: [x, y], heading: direction + side * between(next, 0.85, 2.1), age: age + 1 });
    }
    const end = (points.length - 1) * step;
    stroke(b, points, far, (i, d, run) => {
      // Younger cracks are finer, and what gives out does so little by little: they count as farther off.
      const closes = stopped ? 0 : 3 * least * (1 - ease(0, spacing * 1.6, end - run));
      const finer = d + age * least + closes;
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
    if (age <= 2) grow(at, heading, spacing * between(next, 2, 9), age);
  }
  return near;
};

/** Hairlines and mud: grown cracks, hair-fine with a lit lip, or wide gaps between islands with curled rims. */
const net = (b: Board, f: Cracks, from: number): void => {
  const s = f['spacing-mm'];
  const mud = f.pattern === 'mud';
  const half = f['width-um'] / 2000;
  const far = Math.min(s * 0.4, mud ? 1.2 : 0.9);
  const near = grown(b, s, far, from, half * (mud ? 0.22 : 0.3));
  everywhere(b, (i, x, y) => {
    const d = near[i]!;
    if (d >= far) return;
    // One crack gapes, the next is a hairline; the film curls along part of one side only.
    const uneven = 0.7 + 1.15 * noise(x / 6, y / 6, from + 3) + 0.4 * rough(x / 1.6, y / 1.6, from + 4, 2);
    const curled = remnant(x, y, mud ? 5 : 9, from + 8);
    const wide = half * Math.max(0.12, mud ? uneven : uneven + 0.5 * rough(x / 0.5, y / 0.5, from + 6, 1));
    const gap = Math.max(0, cover(b, wide - d, half * 2));
    if (mud) {
      const lip = (25 + 50 * curled) * Math.exp(-d / (s * 0.12)) * ease(far, 0.3 * far, d);
      raise(b, i, lip * (1 - gap) - 90 * gap);
      tint(b, i, SHADE, gap * 0.85);
    } else {
      // The islands shrank and cup a little toward their borders; polish and dust fill a crack here and there.
      const filled = ease(0, 0.6, noise(x / 4, y / 4, from + 9));
      raise(
        b,
        i,
        (1 + 13 * curled) * (1 - ease(0, far, d)) ** 2 +
          (2 + 15 * curled) * Math.exp(-d / 0.13) -
          (44 - 14 * filled) * gap,
      );
      tint(b, i, SHADE, gap * (0.5 - 0.35 * filled));
      scatter(b, i, (0.02 + 0.12 * filled) * gap);
    }
    roughen(b, i, 0.3, gap);
  });
};

/** Scales of old resin: plates of all sizes, rounded off to dirty furrows, with fine cracks across them. */
const scales = (b: Board, f: Cracks, from: number): void => {
  const s = f['spacing-mm'];
  const half = f['width-um'] / 2000;
  const far = s * 0.24;
  const seams = grown(b, s * 0.74, far, from, half * 0.16);
  const fine = grown(b, s * 0.42, b.pitch * 1.6, from + 11, 0.02);
  everywhere(b, (i, x, y) => {
    const d = seams[i]!;
    // A seam gapes for a while, closes to a hairline, and its walls crumble.
    const uneven = 0.62 + 0.9 * noise(x / 7, y / 5, from + 3) + 0.3 * rough(x / 1.1, y / 1.1, from + 6, 2);
    const wide = 0.62 * half * Math.max(0.16, uneven);
    const gap = 1 - ease(wide * 0.45, wide * 1.1 + b.pitch, d);
    const worn = ease(-0.5, 0.6, noise(x / 8, y / 8, from + 8));
    // The islands lie flat; their borders are worn round here, and curled up a little there.
    const curled = remnant(x, y, 6, from + 13);
    const plate =
      (10 + 12 * worn) * ease(0, far * (0.25 + 0.3 * worn), d) +
      14 * curled * Math.exp(-((Math.max(0, d - wide) / (far * 0.55)) ** 2)) +
      2.5 * rough(x / 2.6, y / 2.6, from + 4, 1);
    const hair =
      Math.max(0, cover(b, 0.03 - fine[i]!, 0.06)) *
      (1 - gap) *
      ease(-0.3, 0.5, noise(x / 6, y / 6, from + 9));
    raise(b, i, plate * (1 - gap) - (20 + 50 * Math.min(1, wide / half)) * gap - 9 * hair);
    // Old polish and dirt fill it, more here than there.
    const dirt = 0.5 + 0.45 * ease(-0.4, 0.5, noise(x / 5, y / 4, from + 10));
    tint(b, i, DIRT, dirt * gap + 0.45 * hair + 0.12 * Math.exp(-Math.max(0, d - wide) / 0.25) * (1 - gap));
    roughen(b, i, 0.3, gap);
    roughen(b, i, 0.06, 0.7 * (1 - gap) * (0.5 + 0.4 * rough(x / 5, y / 4, from + 12, 2)));
  });
};

/** Broken film. */
export const cracks = (b: Board, f: Cracks, from: number): void => {
  if (f.pattern === 'cold-check') coldCheck(b, f, from);
  else if (f.pattern === 'alligator') scales(b, f, from);
  else net(b, f, from);
};
