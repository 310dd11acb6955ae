import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, pour, raise, roughen, stain } from '../field.ts';
import { between, drawnOut, ease, noise, random, rough } from '../noise.ts';
import { type Point, stroke, wander } from '../stamp.ts';
import { grain } from './nibs.ts';

const HONEY = [0.16, 0.46, 1.05] as const;
const DUST_PER_CM2 = 16;
/** Light spreads in what stands thick: so much film a µm of its height leaves what lies below evenly lit. */
const CLEAR = 4;

/**
 * Oil left standing: thick, shining, honey-colored puddles with a rounded dark shore on a face wiped dull, full of what
 * fell in them.
 */
export const oilPools = (b: Board, f: FeatureOf<'oil-pools'>, from: number): void => {
  const size = f['size-mm'];
  const levelAt = (x: number, y: number): number => {
    const u =
      x +
      0.5 * size * noise(x / (size * 0.9), y / (size * 0.6), from + 1) +
      0.7 * noise(x / 4.2, y / 2.2, from + 4);
    const v =
      y +
      0.34 * size * noise(x / (size * 0.9), y / (size * 0.6), from + 2) +
      0.5 * noise(x / 4.2, y / 2.2, from + 5);
    return (
      rough(u / (size * 1.8), v / (size * 0.95), from, 1) +
      0.12 * noise(u / (size * 0.45), v / (size * 0.3), from + 3) +
      0.02 * drawnOut(x, y, 4, 0.6, from + 9) +
      0.05 * rough(x / 3, y / 2.2, from + 15, 2) -
      0.1
    );
  };
  everywhere(b, (i, x, y) => {
    const level = levelAt(x, y);
    const deep = ease(-0.02, 0.5, level);
    const shore = ease(-0.03, 0.03, level);
    // What dried first lies round it as a dark line.
    const tide = Math.exp(-(((level - 0.015) / 0.03) ** 2));
    // Beyond the pool the oil sank in and left the face merely damp.
    const damp = ease(-0.34, 0.02, level + 0.07 * drawnOut(x, y, 6, 0.6, from + 10));
    roughen(b, i, 0.2 - 0.06 * damp, 1 - shore);
    stain(b, i, HONEY, 0.34 * f.strength * damp * (1 - shore));
    if (shore === 0) return;
    const brim = 1.5 * Math.exp(-(((level - 0.06) / 0.045) ** 2));
    raise(b, i, f['height-um'] * (0.28 * shore + 0.62 * Math.sqrt(deep) + 0.16 * brim));
    pour(b, i, CLEAR * f['height-um'] * deep);
    stain(
      b,
      i,
      HONEY,
      f.strength * (0.6 * shore + 0.5 * tide + 2.2 * deep * (0.8 + 0.4 * noise(x / 5, y / 3, from + 11))),
    );
    roughen(b, i, 0.009, shore);
  });
  const next = random(from + 8);
  const wet: Point[] = [];
  for (let n = Math.round((DUST_PER_CM2 * b.widthMm * b.heightMm) / 100); n > 0; n--) {
    const at: Point = [next() * b.widthMm, next() * b.heightMm];
    if (levelAt(...at) < 0.04) continue;
    wet.push(at);
    grain(b, next, at, between(next, 0.03, 0.15, 2.6));
  }
  // One finger tried it and drew a string.
  const [x, y] = wet[0] ?? [b.widthMm / 2, b.heightMm / 2];
  const line = wander(next, [x, y], between(next, -0.7, 0.7), size * 0.7, 0.25, 0.5);
  stroke(b, line, 1.9, (i, d, run) => {
    const t = run / (size * 0.7);
    const wide = 1.5 * (1 - 0.75 * t) * ease(0, 0.1, t);
    raise(
      b,
      i,
      f['height-um'] *
        0.2 *
        (Math.exp(-(((d - wide) / 0.3) ** 2)) - 0.8 * Math.exp(-((d / (wide + 0.1)) ** 4))) *
        (1 - ease(0.7, 1, t)),
    );
  });
};
