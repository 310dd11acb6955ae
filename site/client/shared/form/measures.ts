import { toLiters } from '#engine/calc/units.ts';
import { DAY_MIN, HOUR_MIN } from '#engine/plain/time.ts';
import { QUANTITIES, type Units } from './units.ts';

/** What a number field may be a number of. */
export type Measure = 'degrees' | 'length' | 'volume' | 'area' | 'coverage' | 'time' | 'share';

const { degrees, length, volume, area, coverage } = QUANTITIES;
const same = (value: number): number => value;
const by = (factor: number) => (value: number) => value * factor;
const milliliters = (gallons: number) => by(toLiters(gallons) * 1000);

type Spoken = readonly (readonly [names: string, toBase: (value: number) => number])[];

/**
 * What people call the units of each measure, as `plainUnit` writes them, and the way to its metric unit (minutes, %).
 * Left out is what may be two things: “m” of a time is minutes or months.
 */
const SPOKEN: Readonly<Record<Measure, Spoken>> = {
  degrees: [
    ['°c c celsius °celsius centigrade °centigrade', same],
    ['°f f fahrenheit °fahrenheit', degrees.toMetric],
  ],
  length: [
    ['cm centimeter centimeters centimetre centimetres', same],
    ['mm millimeter millimeters millimetre millimetres', by(0.1)],
    ['m meter meters metre metres', by(100)],
    [`in inch inches " ” ″ '' ’’ ′′`, length.toMetric],
    [`ft foot feet ' ’ ′`, (feet) => length.toMetric(feet * 12)],
  ],
  volume: [
    ['ml milliliter milliliters millilitre millilitres cc', same],
    ['cl', by(10)],
    ['l liter liters litre litres', by(1000)],
    ['floz oz ounce ounces fluidounce fluidounces', volume.toMetric],
    ['cup cups', milliliters(1 / 16)],
    ['pt pint pints', milliliters(1 / 8)],
    ['qt quart quarts', milliliters(1 / 4)],
    ['gal gallon gallons', milliliters(1)],
  ],
  area: [
    ['m² sqm squaremeter squaremeters squaremetre squaremetres', same],
    ['cm² sqcm', by(1 / 10_000)],
    ['ft² sqft sf squarefoot squarefeet', area.toMetric],
    ['in² sqin squareinch squareinches', (inches) => area.toMetric(inches / 144)],
  ],
  coverage: [
    ['m²/l sqm/l m²/liter m²/litre squaremeters/liter squaremetres/litre', same],
    ['ft²/gal sqft/gal sf/gal ft²/gallon sqft/gallon squarefeet/gallon', coverage.toMetric],
  ],
  time: [
    ['min mins minute minutes', same],
    ['h hr hrs hour hours', by(HOUR_MIN)],
    ['d day days', by(DAY_MIN)],
    ['wk wks week weeks', by(7 * DAY_MIN)],
  ],
  share: [['% percent pct %rh percentrh rh', same]],
};

/** A unit as the tables write it: without blanks and stops, “degrees” as its sign, “per” as a stroke. */
const plainUnit = (text: string): string =>
  text
    .toLowerCase()
    .replace(/℃/g, '°c')
    .replace(/℉/g, '°f')
    .replace(/[º˚]|degrees?|deg\b/g, '°')
    .replace(/\s*\bper\b\s*/g, '/')
    .replace(/[\s.]/g, '');

/** The way from a unit, as it was written, to the metric unit of a measure. */
export const spokenUnit = (measure: Measure, text: string): ((value: number) => number) | undefined => {
  const name = plainUnit(text);
  return SPOKEN[measure].find(([names]) => names.split(' ').includes(name))?.[1];
};

/** Degrees without a letter: those that the field is in. */
export const isOwnDegree = (text: string): boolean => plainUnit(text) === '°';

/** What a field is a number of: its measure, and how its own unit is written. */
export type FieldUnit = {
  readonly measure: Measure;
  readonly sign: string;
  /** Into the unit of the field, from the metric one of the measure. */
  readonly fromBase: (value: number) => number;
};

const SIGNS = {
  degrees: { us: '°F', metric: '°C' },
  length: { us: 'in', metric: 'cm' },
  volume: { us: 'fl oz', metric: 'mL' },
  area: { us: 'ft²', metric: 'm²' },
  coverage: { us: 'ft²/gal', metric: 'm²/L' },
} as const satisfies Partial<Record<Measure, Readonly<Record<Units, string>>>>;

/** The unit of a field that holds a quantity, in the units of its form. */
export const quantityUnit = (quantity: keyof typeof QUANTITIES, units: Units): FieldUnit => {
  const measure = quantity === 'fine-degrees' ? 'degrees' : quantity;
  return {
    measure,
    sign: SIGNS[measure][units],
    fromBase: units === 'us' ? QUANTITIES[quantity].toUs : same,
  };
};

/** Units that are the same wherever she lives. */
export const FIXED_UNITS = {
  percent: { measure: 'share', sign: '%', fromBase: same },
  minutes: { measure: 'time', sign: 'min', fromBase: same },
  hours: { measure: 'time', sign: 'h', fromBase: by(1 / HOUR_MIN) },
  days: { measure: 'time', sign: 'days', fromBase: by(1 / DAY_MIN) },
} as const satisfies Readonly<Record<string, FieldUnit>>;
