import type { Sheen } from '../model/board.ts';
import { type Board, everywhere, type Grid, raise, roughen, slowly } from './field.ts';
import { kept } from './kept.ts';
import { between, noise, random, rough, start } from './noise.ts';

/** Width of the micro-surface's slopes: each gives a 60° gloss inside the class of that name. */
export const SHEEN_ROUGHNESS: Readonly<Record<Sheen, number>> = {
  matte: 0.18,
  eggshell: 0.088,
  satin: 0.054,
  'semi-gloss': 0.027,
  gloss: 0.012,
  'high-gloss': 0.005,
};

/**
 * A leveled film is never flat: swells of a µm or two over a centimeter bend a reflection, and the brush, the roller or
 * the gun leaves a faint grain of its own in it. Relief in µm, lengths in mm.
 */
const SWELL_UM = 2.2;
const SWELL_MM = 10;
const GRAIN_UM = [0.9, 1.9] as const;
const GRAIN_MM = [0.9, 1.7] as const;
/** The grain of a brush runs along the board, that of a roller or a gun in no direction: length to width. */
const ROLLED = [1, 1.6] as const;
const BRUSHED = [2.5, 6] as const;
/** How far a stroke leans off the length of the board, as a slope. */
const ASKEW = 0.26;
const FINE_UM = 0.34;
const FINE_MM = 0.42;
/** A dull film shows its own grain more than a bright one, which flowed out longer. */
const DULL = 14;
/** How much its sheen varies from place to place. */
const SHEEN_DRIFT = 0.1;
/** Depth at which a pore mirrors nothing any more, and how rough it is. */
const OPEN_UM = 10;
const PORE_ROUGHNESS = 1.2;
/** A film so thick fills pores by half. */
const HALF_FILLED_UM = 50;

const levelled = kept(
  ({ columns, rows, pitch }: Grid, seed: number) => [columns, rows, pitch, seed].join(),
  (grid, seed) => {
    const swell = new Float32Array(grid.columns * grid.rows);
    const grain = new Float32Array(grid.columns * grid.rows);
    const thickness = slowly(grid, (x, y) => 1 + 0.06 * rough(x / 25, y / 25, seed + 3, 1));
    const drift = slowly(grid, (x, y) => 1 + SHEEN_DRIFT * noise(x / 14, y / 4.5, seed + 5));
    const next = random(start(seed, 0));
    const grainUm = between(next, ...GRAIN_UM);
    const across = between(next, ...GRAIN_MM);
    const along = across * (next() < 0.5 ? between(next, ...ROLLED) : between(next, ...BRUSHED));
    const askew = between(next, -ASKEW, ASKEW);
    everywhere(grid, (i, x, y) => {
      const wide = rough(x / SWELL_MM, y / SWELL_MM, seed, 2);
      // Nobody strokes quite along a board; and what is finer follows no line of the picture.
      const bent = y + askew * x + 0.8 * wide;
      const coarse = rough(x / along, bent / across, seed + 7, 1);
      swell[i] = SWELL_UM * wide;
      grain[i] =
        grainUm * coarse +
        FINE_UM *
          rough(x / FINE_MM + 1.7 * wide + 1.3 * coarse, y / FINE_MM + wide - 1.7 * coarse, seed + 9, 2) *
          1.5;
    });
    return { swell, grain, thickness, drift };
  },
);

/** Lays an even coat. */
export const layFilm = (b: Board, filmUm: number, sheen: Sheen, wet: boolean, seed: number): void => {
  const { swell, grain, thickness, drift } = levelled(b, seed);
  const roughness = filmUm === 0 ? b.bareRoughness : wet ? 0.01 : SHEEN_ROUGHNESS[sheen];
  const filled = filmUm / (filmUm + HALF_FILLED_UM);
  const dull = 1 + DULL * roughness;
  for (let i = 0; i < swell.length; i++) {
    // A film fills the pores in part; where it sinks in, it is broken.
    const sunk = b.height[i]! * filled;
    const open = Math.min(1, Math.max(0, (sunk - b.height[i]!) / OPEN_UM));
    raise(b, i, -sunk + swell[i]! + dull * grain[i]!);
    b.film[i] = filmUm * thickness[i]!;
    b.roughness[i] = roughness * drift[i]!;
    if (open > 0) roughen(b, i, PORE_ROUGHNESS, open);
  }
};
