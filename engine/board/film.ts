import type { Sheen } from '../model/board.ts';
import { type Board, everywhere, type Grid, raise } from './field.ts';
import { kept } from './kept.ts';
import { rough } from './noise.ts';

/** Width of the micro-surface's slopes: each gives a 60° gloss inside the class of that name. */
export const SHEEN_ROUGHNESS: Readonly<Record<Sheen, number>> = {
  matte: 0.18,
  eggshell: 0.088,
  satin: 0.054,
  'semi-gloss': 0.027,
  gloss: 0.012,
  'high-gloss': 0.005,
};

/** A leveled film is never flat: swells of about a µm over a centimeter bend a reflection. */
const SWELL_UM = 1.6;
const SWELL_MM = 11;
const RIPPLE_UM = 0.5;
const RIPPLE_MM = 1.9;

const levelled = kept(
  ({ columns, rows, pitch }: Grid, seed: number) => [columns, rows, pitch, seed].join(),
  (grid, seed) => {
    const swell = new Float32Array(grid.columns * grid.rows);
    const thickness = new Float32Array(grid.columns * grid.rows);
    everywhere(grid, (i, x, y) => {
      swell[i] =
        SWELL_UM * rough(x / SWELL_MM, y / SWELL_MM, seed, 2) +
        RIPPLE_UM * rough(x / RIPPLE_MM, y / RIPPLE_MM, seed + 7, 1);
      thickness[i] = 1 + 0.06 * rough(x / 25, y / 25, seed + 3, 1);
    });
    return { swell, thickness };
  },
);

/** Lays an even coat. */
export const layFilm = (b: Board, filmUm: number, sheen: Sheen, wet: boolean, seed: number): void => {
  const { swell, thickness } = levelled(b, seed);
  b.roughness.fill(filmUm === 0 ? b.bareRoughness : wet ? 0.01 : SHEEN_ROUGHNESS[sheen]);
  for (let i = 0; i < swell.length; i++) {
    raise(b, i, swell[i]!);
    b.film[i] = filmUm * thickness[i]!;
  }
};
