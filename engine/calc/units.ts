// The only place where units are converted. Inside the engine: °C, µm, mm, m², liters, minutes, fractions.
// Factors are exact by definition (international inch 25.4 mm, US gallon 231 in³, US fluid ounce 1/128 gallon).

/** What she measures in. */
export type Units = 'metric' | 'us';

const MICROMETERS_PER_MIL = 25.4;
const MILLIMETERS_PER_INCH = 25.4;
const LITERS_PER_GALLON = 3.785411784;
const MILLILITERS_PER_FLUID_OUNCE = 29.5735295625;
const SQUARE_METERS_PER_SQUARE_FOOT = 0.09290304;

export const toCelsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;
export const toFahrenheit = (celsius: number): number => (celsius * 9) / 5 + 32;

export const toMicrometers = (mils: number): number => mils * MICROMETERS_PER_MIL;
export const toMils = (micrometers: number): number => micrometers / MICROMETERS_PER_MIL;

export const toMillimeters = (inches: number): number => inches * MILLIMETERS_PER_INCH;
export const toInches = (millimeters: number): number => millimeters / MILLIMETERS_PER_INCH;

export const toLiters = (gallons: number): number => gallons * LITERS_PER_GALLON;
export const toGallons = (liters: number): number => liters / LITERS_PER_GALLON;

export const toMilliliters = (fluidOunces: number): number => fluidOunces * MILLILITERS_PER_FLUID_OUNCE;
export const toFluidOunces = (milliliters: number): number => milliliters / MILLILITERS_PER_FLUID_OUNCE;

export const toSquareMeters = (squareFeet: number): number => squareFeet * SQUARE_METERS_PER_SQUARE_FOOT;
export const toSquareFeet = (squareMeters: number): number => squareMeters / SQUARE_METERS_PER_SQUARE_FOOT;

/** Spreading rate, ft² per US gallon to m² per liter. */
export const toSquareMetersPerLiter = (squareFeetPerGallon: number): number =>
  toSquareMeters(squareFeetPerGallon) / LITERS_PER_GALLON;
/** Spreading rate, m² per liter to ft² per US gallon. */
export const toSquareFeetPerGallon = (squareMetersPerLiter: number): number =>
  toSquareFeet(squareMetersPerLiter) * LITERS_PER_GALLON;
