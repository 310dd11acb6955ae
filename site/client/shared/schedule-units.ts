import {
  toCelsius,
  toFahrenheit,
  toInches,
  toMillimeters,
  toSquareFeetPerGallon,
  toSquareMetersPerLiter,
} from '#engine/calc/units.ts';
import { readNumber, writeNumber } from './form/number.ts';

type Way = readonly [toUs: (value: number) => number, toMetric: (value: number) => number];

const degrees: Way = [toFahrenheit, toCelsius];
/** Between inches and centimeters. */
const length: Way = [(value) => toInches(value * 10), (value) => toMillimeters(value) / 10];
const PARTS = ['top', 'side', 'front', 'leg'];

/** The fields whose unit changes, with the way to turn each. */
const TURNED: Readonly<Record<string, Way>> = {
  air: degrees,
  night: degrees,
  'can-cold': degrees,
  'can-hot': degrees,
  'can-coverage': [toSquareFeetPerGallon, toSquareMetersPerLiter],
  ...Object.fromEntries(
    PARTS.flatMap((part) => [`${part}-long`, `${part}-wide`].map((name) => [name, length])),
  ),
};

/** A value of a field in the unit of the engine's side of the form: °C, cm, m²/L. */
export const metric = (name: string, value: number, us: boolean): number =>
  us ? (TURNED[name]?.[1](value) ?? value) : value;

/** Turns what stands in the form over into the other units; what is no number stays as it is. */
export const turnForm = (form: HTMLFormElement, us: boolean): void => {
  for (const [name, [toUs, toMetric]] of Object.entries(TURNED)) {
    const field = form.elements.namedItem(name);
    if (!(field instanceof HTMLInputElement)) continue;
    const value = readNumber(field.value);
    if (value === undefined || Number.isNaN(value)) continue;
    field.value = writeNumber(us ? toUs(value) : toMetric(value), 1);
  }
};
