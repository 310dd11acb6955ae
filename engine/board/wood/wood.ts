import type { Wood } from '../../model/board.ts';
import { type Board, everywhere, slowly } from '../field.ts';
import { noise, random, rough, start } from '../noise.ts';
import { FIGURES } from './figure.ts';
import { growth, type Knot, sawn } from './grain.ts';
import { drawKnot } from './knot.ts';
import { drawFlecks, openVessels } from './vessels.ts';

/** Draws the figure of a wood, and opens its pores. */
export const drawWood = (b: Board, wood: Wood, seed: number, at?: Knot): void => {
  const figure = FIGURES[wood];
  const { early, late, streak } = figure;
  const grain = sawn(b.widthMm, b.heightMm, figure.ringMm, seed, at);
  const heartwood = slowly(b, (x, y) => 0.28 + 0.9 * noise(x / 110, y / 9, seed + 7));
  const shine = slowly(b, (x, y) => 1 + 0.06 * rough(x / 30, y / 12, seed + 11, 1));
  const { ribbonMm } = figure;
  const ribbon = ribbonMm && slowly(b, (x, y) => 0.22 * noise(x / 90, (y + 0.04 * x) / ribbonMm, seed + 8));
  everywhere(b, (i, x, y) => {
    const v = grain.across(x, y);
    const ring = grain.ring(x, y, v);
    const year = Math.floor(ring);
    const strength = 1 + 0.5 * noise(year * 0.71, 0.5, seed + 21);
    const fine = noise(x / 13, v / 0.34, seed + 4);
    const short = noise(x / 2.4, v / 0.22, seed + 6);
    const fiber = 0.5 * fine + 0.5 * noise(x / 34, v / 1.2, seed + 5) + 0.4 * short;
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
    b.red[i] = from(early[0], late[0], streak[0]);
    b.green[i] = from(early[1], late[1], streak[1]);
    b.blue[i] = from(early[2], late[2], streak[2]);
  });
  if (at) drawKnot(b, grain, figure, at, seed);
  const next = random(start(seed, 1));
  if (figure.flecks) drawFlecks(b, grain, figure.flecks, next);
  if (figure.vessels) openVessels(b, grain, figure.vessels, next);
};
