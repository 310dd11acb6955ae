import { type Lay, STRAIGHT } from './light.ts';
import type { Steps } from './steps.ts';

/** Red, green and blue, linear light, 0 to 1. */
export type Rgb = readonly [number, number, number];

/** How a patch of surface is cut into pixels. */
export type Grid = {
  columns: number;
  rows: number;
  /** mm a pixel */
  pitch: number;
};

/** The maps that make up a patch of finished surface, one value a pixel, row by row. */
export type Board = Grid & {
  widthMm: number;
  heightMm: number;
  /** Relief of the surface, µm, up is positive. */
  height: Float32Array;
  /** Clear film, µm; 0 is bare. */
  film: Float32Array;
  /** Scattering of the film, S·X of Kubelka and Munk, 0 is clear. */
  haze: Float32Array;
  /** Width of the slopes of the micro-surface (GGX α). */
  roughness: Float32Array;
  /** Reflectance of what lies under the film, linear light, 0–1. */
  red: Float32Array;
  green: Float32Array;
  blue: Float32Array;
  /** Cast of the veil: how much more or less the film scatters in red, green and blue. */
  veil: [number, number, number];
  /** Warm color of the film, 0 clear, 1 as deep as old oil varnish. */
  amber: number;
  /** Roughness where no film lies. */
  bareRoughness: number;
  /** How it lies under the light. */
  lay: Lay;
};

/** An empty board; its height follows from the shape of the picture. */
export const blankBoard = (widthMm: number, columns: number, rows: number): Board => {
  const map = () => new Float32Array(columns * rows);
  const pitch = widthMm / columns;
  return {
    columns,
    rows,
    pitch,
    widthMm,
    heightMm: rows * pitch,
    height: map(),
    film: map(),
    haze: map(),
    roughness: map(),
    red: map(),
    green: map(),
    blue: map(),
    veil: [1, 1, 1],
    amber: 0,
    bareRoughness: 0.28,
    lay: STRAIGHT,
  };
};

type Visit = (i: number, x: number, y: number) => void;

const visitRows = ({ columns, pitch }: Grid, visit: Visit, from: number, to: number): void => {
  for (let row = from, i = from * columns; row < to; row++) {
    for (let column = 0; column < columns; column++, i++)
      visit(i, (column + 0.5) * pitch, (row + 0.5) * pitch);
  }
};

/** Calls `visit` for every pixel with its place in mm. */
export const everywhere = (grid: Grid, visit: Visit): void => visitRows(grid, visit, 0, grid.rows);

/** So many steps keep the heaviest feature of a board short on a slow phone. */
const BANDS = 4;

/** The same, band by band, for a feature that takes long. */
export function* inBands(grid: Grid, visit: Visit): Steps {
  for (let band = 0; band < BANDS; band++) {
    if (band) yield;
    const at = (of: number) => Math.round((grid.rows * of) / BANDS);
    visitRows(grid, visit, at(band), at(band + 1));
  }
}

/** Pixels between the places at which a slow change is worked out. */
const SLOW = 6;

/** A map of what changes slowly from place to place (mm): worked out here and there, and straight in between. */
export const slowly = (
  { columns, rows, pitch }: Grid,
  value: (x: number, y: number) => number,
): Float32Array => {
  const out = new Float32Array(columns * rows);
  const knots = Math.ceil(columns / SLOW) + 1;
  const lineAt = (row: number) =>
    Float64Array.from({ length: knots }, (_, knot) =>
      value((knot * SLOW + 0.5) * pitch, (row + 0.5) * pitch),
    );
  let upper = lineAt(0);
  let lower = lineAt(SLOW);
  for (let row = 0, i = 0; row < rows; row++) {
    const down = (row % SLOW) / SLOW;
    if (row > 0 && down === 0) [upper, lower] = [lower, lineAt(row + SLOW)];
    for (let column = 0; column < columns; column++, i++) {
      const knot = Math.floor(column / SLOW);
      const on = column / SLOW - knot;
      const above = upper[knot]! + (upper[knot + 1]! - upper[knot]!) * on;
      const below = lower[knot]! + (lower[knot + 1]! - lower[knot]!) * on;
      out[i] = above + (below - above) * down;
    }
  }
  return out;
};

/** Adds to the relief, µm. */
export const raise = (b: Board, i: number, um: number) => {
  b.height[i] = b.height[i]! + um;
};

/** Adds scattering (S·X). */
export const scatter = (b: Board, i: number, scattering: number) => {
  b.haze[i] = b.haze[i]! + scattering;
};

/** Adds film, µm. */
export const pour = (b: Board, i: number, um: number) => {
  b.film[i] = b.film[i]! + um;
};

export const scaleFilm = (b: Board, i: number, factor: number) => {
  b.film[i] = b.film[i]! * factor;
};

/** Darkens the base, a factor each for red, green and blue. */
export const dim = (b: Board, i: number, [red, green, blue]: readonly [number, number, number]) => {
  b.red[i] = b.red[i]! * red;
  b.green[i] = b.green[i]! * green;
  b.blue[i] = b.blue[i]! * blue;
};

/** Draws a color over the base, `cover` 0–1. */
export const tint = (
  b: Board,
  i: number,
  [red, green, blue]: readonly [number, number, number],
  cover: number,
) => {
  const keep = 1 - cover;
  b.red[i] = b.red[i]! * keep + red * cover;
  b.green[i] = b.green[i]! * keep + green * cover;
  b.blue[i] = b.blue[i]! * keep + blue * cover;
};

/** Shows another ground in place of the base, `cover` 0–1. */
export const uncover = (b: Board, i: number, ground: Readonly<Board>, cover: number) => {
  const keep = 1 - cover;
  b.red[i] = b.red[i]! * keep + ground.red[i]! * cover;
  b.green[i] = b.green[i]! * keep + ground.green[i]! * cover;
  b.blue[i] = b.blue[i]! * keep + ground.blue[i]! * cover;
};

/** Lets the base shine through a stain: each channel loses its share (Beer–Lambert), `depth` 0 is clear. */
export const stain = (b: Board, i: number, density: readonly [number, number, number], depth: number) => {
  b.red[i] = b.red[i]! * Math.exp(-density[0] * depth);
  b.green[i] = b.green[i]! * Math.exp(-density[1] * depth);
  b.blue[i] = b.blue[i]! * Math.exp(-density[2] * depth);
};

/** Moves the roughness of a pixel towards another, `share` 0–1. */
export const roughen = (b: Board, i: number, roughness: number, share: number) => {
  b.roughness[i] = b.roughness[i]! + (roughness - b.roughness[i]!) * share;
};
