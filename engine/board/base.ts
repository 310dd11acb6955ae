import type { Paint, Wood } from '../model/board.ts';
import { type Board, blankBoard, everywhere, type Grid, type Rgb, slowly } from './field.ts';
import { kept } from './kept.ts';
import { between, drawnOut, noise, random, rough, start } from './noise.ts';
import type { Knot } from './wood/grain.ts';
import { drawWood } from './wood/wood.ts';

/** Reflectance of the paints, linear light. Chosen by eye for calm boards. */
const PAINT: Readonly<Record<Paint, Rgb>> = {
  white: [0.8, 0.785, 0.75],
  cream: [0.74, 0.66, 0.49],
  gray: [0.24, 0.245, 0.25],
  sage: [0.25, 0.3, 0.2],
  navy: [0.018, 0.034, 0.08],
  black: [0.017, 0.017, 0.018],
  red: [0.27, 0.032, 0.024],
  'duck-egg': [0.4, 0.54, 0.52],
};

/** No two cans are quite alike: so much lighter or darker, and so much more or less of each color. */
const SHADES = 0.3;
const HUES = 0.12;
/** Grays differ so much less: a cast shows in them at once. */
const GRAY_HUES = 0.3;

const drawPaint = (b: Board, paint: Paint, seed: number): void => {
  const next = random(start(seed, 0));
  const lighter = 1 + SHADES * (2 * next() - 1);
  const vivid = 1 - Math.min(...PAINT[paint]) / Math.max(...PAINT[paint]);
  const hues = HUES * (GRAY_HUES + (1 - GRAY_HUES) * vivid);
  // A pale paint has little room to be paler.
  const mixed = (share: number): number =>
    share * (1 + (1 - share) * (lighter * (1 + hues * (2 * next() - 1)) - 1));
  const [red, green, blue] = PAINT[paint].map(mixed) as [number, number, number];
  const lean = between(next, -0.2, 0.2);
  const clouds = slowly(b, (x, y) => 1 + 0.03 * rough(x / 18, y / 12, seed, 1));
  everywhere(b, (i, x, y) => {
    // Strokes lean a little, and end somewhere; a pigment is never ground quite fine.
    const lift =
      clouds[i]! +
      0.012 * drawnOut(x, y + lean * x, 14, 0.8, seed + 1) +
      0.01 * noise(x / 0.45, y / 0.45, seed + 2);
    b.red[i] = red * lift;
    b.green[i] = green * lift;
    b.blue[i] = blue * lift;
  });
};

type Base = {
  readonly paint?: Paint | undefined;
  readonly wood?: Wood | undefined;
  readonly knot?: Knot | undefined;
};

const drawn = kept(
  ({ columns, rows, pitch }: Grid, { paint, wood, knot }: Base, seed: number) =>
    [columns, rows, pitch, paint, wood, knot, seed].join(),
  ({ columns, rows, pitch }, { paint, wood, knot }, seed) => {
    const board = blankBoard(columns * pitch, columns, rows);
    if (paint) drawPaint(board, paint, seed);
    if (wood) drawWood(board, wood, seed, knot);
    return board;
  },
);

/** What lies below the board's own base, to be shown where that is gone. Not to be changed. */
export const groundBelow = (b: Board, base: Base, seed: number): Readonly<Board> => drawn(b, base, seed);

/** Lays the paint or the bare wood that everything else lies on. */
export const layBase = (b: Board, base: Base, seed: number): void => {
  const from = drawn(b, base, seed);
  for (const map of ['red', 'green', 'blue', 'height'] as const) b[map].set(from[map]);
  if (base.wood) b.bareRoughness = 0.34;
};
