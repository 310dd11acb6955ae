import type { Paint, Wood } from '../model/board.ts';
import { type Board, blankBoard, everywhere, type Grid, raise, tint } from './field.ts';
import { kept } from './kept.ts';
import { noise } from './noise.ts';

export type Rgb = readonly [number, number, number];

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

type Figure = {
  early: Rgb;
  late: Rgb;
  /** Distance between growth rings, mm. */
  ringMm: number;
  /** How sharp and dark the late wood is, 0–1. */
  contrast: number;
  /** Open pores: their share (0 none) and whether they follow the rings. */
  pores: number;
  ringPorous: boolean;
};

/** Woods under a clear film, linear light. */
const WOOD: Readonly<Record<Wood, Figure>> = {
  oak: {
    early: [0.5, 0.32, 0.16],
    late: [0.36, 0.205, 0.09],
    ringMm: 5.2,
    contrast: 0.75,
    pores: 0.5,
    ringPorous: true,
  },
  pine: {
    early: [0.68, 0.47, 0.25],
    late: [0.46, 0.24, 0.085],
    ringMm: 6.5,
    contrast: 1,
    pores: 0,
    ringPorous: false,
  },
  walnut: {
    early: [0.185, 0.1, 0.055],
    late: [0.085, 0.045, 0.025],
    ringMm: 7,
    contrast: 0.8,
    pores: 0.3,
    ringPorous: false,
  },
  maple: {
    early: [0.69, 0.53, 0.35],
    late: [0.58, 0.41, 0.25],
    ringMm: 9,
    contrast: 0.5,
    pores: 0,
    ringPorous: false,
  },
  mahogany: {
    early: [0.26, 0.1, 0.052],
    late: [0.17, 0.058, 0.03],
    ringMm: 8,
    contrast: 0.5,
    pores: 0.42,
    ringPorous: false,
  },
  cherry: {
    early: [0.43, 0.22, 0.11],
    late: [0.33, 0.145, 0.068],
    ringMm: 8,
    contrast: 0.55,
    pores: 0,
    ringPorous: false,
  },
};

/** Where the growth rings lie: whole numbers are ring borders; the grain runs along the board. */
const ringAt = (x: number, y: number, ringMm: number, seed: number): number =>
  (y + 10 * noise(x / 120, y / 30, seed) + 0.7 * noise(x / 40, y / 6, seed + 1)) / ringMm;

const drawPaint = (b: Board, paint: Paint, seed: number): void => {
  const [red, green, blue] = PAINT[paint];
  everywhere(b, (i, x, y) => {
    const lift = 1 + 0.018 * noise(x / 16, y / 16, seed);
    b.red[i] = red * lift;
    b.green[i] = green * lift;
    b.blue[i] = blue * lift;
  });
};

const PORE_DARK: Rgb = [0.055, 0.03, 0.016];
const PORE_DEPTH_UM = 14;

const drawWood = (b: Board, wood: Wood, seed: number): void => {
  const figure = WOOD[wood];
  const { early, late } = figure;
  everywhere(b, (i, x, y) => {
    const ring = ringAt(x, y, figure.ringMm, seed);
    const part = ring - Math.floor(ring);
    const growth = part < 0.86 ? (part / 0.86) ** 2.2 : 1 - (part - 0.86) / 0.14;
    const fiber =
      0.5 * noise(x / 14, y / 0.36, seed + 4) +
      0.4 * noise(x / 30, y / 1.3, seed + 5) +
      0.25 * noise(x / 3, y / 0.2, seed + 6);
    const dark = Math.min(1, Math.max(0, growth * figure.contrast + fiber * 0.3 + 0.06));
    b.red[i] = early[0] + (late[0] - early[0]) * dark;
    b.green[i] = early[1] + (late[1] - early[1]) * dark;
    b.blue[i] = early[2] + (late[2] - early[2]) * dark;
    if (figure.pores > 0) {
      const zone = figure.ringPorous ? (part < 0.34 ? 0.22 : -0.14) : 0;
      const pore = noise(x / 5.5, y / 0.24, seed + 9) - 0.74 + figure.pores * 0.5 + zone;
      if (pore > 0) {
        const open = Math.min(1, pore * 4);
        tint(b, i, PORE_DARK, open * 0.6);
        raise(b, i, -PORE_DEPTH_UM * open);
      }
    }
  });
};

type Base = { readonly paint?: Paint | undefined; readonly wood?: Wood | undefined };

const drawn = kept(
  ({ columns, rows, pitch }: Grid, { paint, wood }: Base, seed: number) =>
    [columns, rows, pitch, paint, wood, seed].join(),
  ({ columns, rows, pitch }, { paint, wood }, seed) => {
    const board = blankBoard(columns * pitch, columns, rows);
    if (paint) drawPaint(board, paint, seed);
    if (wood) drawWood(board, wood, seed);
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
