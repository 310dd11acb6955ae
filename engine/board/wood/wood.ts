import type { Wood } from '../../model/board.ts';
import { type Board, everywhere, slowly } from '../field.ts';
import { between, drawnOut, noise, random, rough, start } from '../noise.ts';
import { FIGURES } from './figure.ts';
import { growth, type Knot, sawn } from './grain.ts';
import { drawKnot } from './knot.ts';
import { drawFlecks, openVessels } from './vessels.ts';

/** How far single fibers move the border of a year, in years. */
const JAGGED = 0.022;
/** How much lighter or darker, and how much less or more yellow, one tree is than another of its kind. */
const TONES = 0.17;
const CASTS = 0.08;

/** Draws the figure of a wood, and opens its pores. */
export const drawWood = (b: Board, wood: Wood, seed: number, at?: Knot): void => {
  const figure = FIGURES[wood];
  const { early, late, streak } = figure;
  const grain = sawn(b.widthMm, b.heightMm, figure.ringMm, seed, at);
  const heartwood = slowly(b, (x, y) => 0.28 + 0.9 * noise(x / 110, y / 9, seed + 7));
  const shine = slowly(b, (x, y) => 1 + 0.06 * rough(x / 30, y / 12, seed + 11, 1));
  // No two trees are of one color.
  const own = random(start(seed, 3));
  const tone = 1 + between(own, -TONES, TONES);
  const cast = 1 + between(own, -CASTS, CASTS);
  const { ribbonMm } = figure;
  const ribbon = ribbonMm && slowly(b, (x, y) => 0.22 * noise(x / 90, (y + 0.04 * x) / ribbonMm, seed + 8));
  everywhere(b, (i, x, y) => {
    const v = grain.across(x, y);
    const fine = drawnOut(x, v, 11, 0.34, seed + 4);
    const short = drawnOut(x, v, 2.2, 0.2, seed + 6);
    // The border of a year is no line: cell by cell one wood gives way to the other.
    const ring = grain.ring(x, y, v) + JAGGED * (fine + 0.8 * short);
    const year = Math.floor(ring);
    const strength =
      1 + 0.5 * noise(year * 0.71, 0.5, seed + 21) + 0.3 * noise(x / 30, year * 0.71, seed + 22);
    const fiber = 0.5 * fine + 0.5 * drawnOut(x, v, 26, 1.2, seed + 5) + 0.4 * short;
    const dark = Math.min(
      1,
      Math.max(
        0,
        growth(ring - year, figure.onset) * figure.contrast * strength +
          fiber * figure.fiber * 0.36 +
          (ribbon ? ribbon[i]! : 0) +
          0.05,
      ),
    );
    const heart = Math.min(0.75, Math.max(0, heartwood[i]! + 0.12 * fine));
    // Light comes off the ends of some fibers and not of others.
    const luster = shine[i]! + figure.fiber * (0.13 * fine + 0.13 * short);
    const from = (a: number, z: number, h: number) => {
      const plain = a + (z - a) * dark;
      return (plain + (h * (0.75 + 0.5 * (1 - dark)) - plain) * heart * 0.6) * luster;
    };
    b.red[i] = tone * from(early[0], late[0], streak[0]);
    b.green[i] = tone * from(early[1], late[1], streak[1]);
    b.blue[i] = tone * cast * from(early[2], late[2], streak[2]);
  });
  if (at) drawKnot(b, grain, figure, at, seed);
  const next = random(start(seed, 1));
  if (figure.flecks) drawFlecks(b, grain, figure.flecks, next);
  if (figure.vessels) openVessels(b, grain, figure.vessels, next);
};
