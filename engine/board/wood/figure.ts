import type { Wood } from '../../model/board.ts';
import type { Rgb } from '../field.ts';

export type Figure = {
  early: Rgb;
  late: Rgb;
  /** The color of darker streaks of heartwood. */
  streak: Rgb;
  /** Distance between growth rings, mm. */
  ringMm: number;
  /** How sharp the late wood begins: 1 little by little, 6 as a thin line. */
  onset: number;
  /** How dark the late wood is, 0–1. */
  contrast: number;
  /** How much the fibers show. */
  fiber: number;
  /** Width of interlocked grain, mm, as mahogany has it; 0 is straight grain. */
  ribbonMm: number;
  vessels?: Vessels;
  flecks?: Flecks;
};

/** Open vessels, cut lengthwise. */
export type Vessels = {
  perCm2: number;
  /** Narrowest and widest, shortest and longest, mm. */
  widthMm: readonly [number, number];
  lengthMm: readonly [number, number];
  /** Share of the ring in which nearly all lie; 1 is everywhere. */
  zone: number;
  color: Rgb;
  depthUm: number;
};

/** Ends of rays, or canals of resin: fine lines along the grain, in the color of the wood. */
export type Flecks = {
  perCm2: number;
  widthMm: number;
  lengthMm: readonly [number, number];
  color: Rgb;
  cover: number;
};

/** Woods under a clear film, linear light: colors by eye; vessels and rings as in flat-sawn boards, from memory. */
export const FIGURES: Readonly<Record<Wood, Figure>> = {
  oak: {
    early: [0.5, 0.315, 0.15],
    late: [0.385, 0.215, 0.092],
    streak: [0.33, 0.18, 0.075],
    ringMm: 4.4,
    onset: 1.4,
    contrast: 0.75,
    fiber: 1.5,
    ribbonMm: 0,
    vessels: {
      perCm2: 150,
      widthMm: [0.06, 0.22],
      lengthMm: [0.6, 12],
      zone: 0.36,
      color: [0.12, 0.055, 0.018],
      depthUm: 13,
    },
    flecks: { perCm2: 26, widthMm: 0.13, lengthMm: [1.5, 16], color: [0.27, 0.135, 0.052], cover: 0.4 },
  },
  pine: {
    early: [0.69, 0.48, 0.25],
    late: [0.47, 0.235, 0.08],
    streak: [0.6, 0.36, 0.15],
    ringMm: 4.2,
    onset: 3.2,
    contrast: 1,
    fiber: 1.0,
    ribbonMm: 0,
    flecks: { perCm2: 5, widthMm: 0.12, lengthMm: [1, 6], color: [0.33, 0.15, 0.05], cover: 0.5 },
  },
  walnut: {
    early: [0.215, 0.11, 0.048],
    late: [0.1, 0.047, 0.021],
    streak: [0.085, 0.041, 0.023],
    ringMm: 5.5,
    onset: 2.2,
    contrast: 0.8,
    fiber: 1.7,
    ribbonMm: 0,
    vessels: {
      perCm2: 50,
      widthMm: [0.045, 0.15],
      lengthMm: [0.5, 8],
      zone: 0.7,
      color: [0.045, 0.021, 0.011],
      depthUm: 11,
    },
  },
  maple: {
    early: [0.69, 0.53, 0.345],
    late: [0.57, 0.395, 0.23],
    streak: [0.6, 0.44, 0.27],
    ringMm: 5,
    onset: 6,
    contrast: 0.7,
    fiber: 0.7,
    ribbonMm: 0,
    vessels: {
      perCm2: 40,
      widthMm: [0.04, 0.07],
      lengthMm: [0.3, 2.5],
      zone: 1,
      color: [0.46, 0.31, 0.17],
      depthUm: 2,
    },
    flecks: { perCm2: 60, widthMm: 0.12, lengthMm: [0.4, 1.6], color: [0.47, 0.29, 0.15], cover: 0.4 },
  },
  mahogany: {
    early: [0.275, 0.104, 0.05],
    late: [0.19, 0.064, 0.031],
    streak: [0.15, 0.05, 0.026],
    ringMm: 9,
    onset: 2,
    contrast: 0.45,
    fiber: 1.7,
    ribbonMm: 11,
    vessels: {
      perCm2: 52,
      widthMm: [0.05, 0.15],
      lengthMm: [0.6, 7],
      zone: 1,
      color: [0.085, 0.028, 0.014],
      depthUm: 10,
    },
  },
  cherry: {
    early: [0.44, 0.222, 0.108],
    late: [0.34, 0.145, 0.064],
    streak: [0.31, 0.13, 0.058],
    ringMm: 6,
    onset: 4,
    contrast: 0.6,
    fiber: 0.75,
    ribbonMm: 0,
    vessels: {
      perCm2: 40,
      widthMm: [0.04, 0.07],
      lengthMm: [0.3, 3],
      zone: 1,
      color: [0.27, 0.115, 0.05],
      depthUm: 2,
    },
    flecks: { perCm2: 16, widthMm: 0.16, lengthMm: [0.5, 3], color: [0.235, 0.09, 0.038], cover: 0.5 },
  },
};
