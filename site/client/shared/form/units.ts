import {
  toCelsius,
  toFahrenheit,
  toFluidOunces,
  toInches,
  toMilliliters,
  toMillimeters,
  toSquareFeet,
  toSquareFeetPerGallon,
  toSquareMeters,
  toSquareMetersPerLiter,
} from '#engine/calc/units.ts';

export type Units = 'us' | 'metric';

/** A quantity as a field holds it: the way between both units, and how many digits each is worth. */
export type Quantity = {
  readonly toUs: (metric: number) => number;
  readonly toMetric: (us: number) => number;
  readonly digits: Readonly<Record<Units, number>>;
};

export const QUANTITIES = {
  degrees: { toUs: toFahrenheit, toMetric: toCelsius, digits: { us: 0, metric: 0 } },
  // Where a plan is made of it, half a degree tells.
  'fine-degrees': { toUs: toFahrenheit, toMetric: toCelsius, digits: { us: 1, metric: 1 } },
  /** Inches and centimeters. */
  length: {
    toUs: (centimeters) => toInches(centimeters * 10),
    toMetric: (inches) => toMillimeters(inches) / 10,
    digits: { us: 1, metric: 1 },
  },
  /** Fluid ounces and milliliters. */
  volume: { toUs: toFluidOunces, toMetric: toMilliliters, digits: { us: 2, metric: 1 } },
  /** Square feet and square meters. */
  area: { toUs: toSquareFeet, toMetric: toSquareMeters, digits: { us: 1, metric: 2 } },
  /** ft²/gal and m²/L. */
  coverage: { toUs: toSquareFeetPerGallon, toMetric: toSquareMetersPerLiter, digits: { us: 1, metric: 1 } },
} as const satisfies Readonly<Record<string, Quantity>>;

/** The units of a place, by the language of its browser: three countries measure in feet. */
export const unitsOf = (language: string): Units => (/^en-(US|LR)|^my/.test(language) ? 'us' : 'metric');
