import {
  toCelsius,
  toFahrenheit,
  toGallons,
  toInches,
  toMillimeters,
  toMils,
  toSquareFeet,
  toSquareFeetPerGallon,
  toSquareMetersPerLiter,
} from '#engine/calc/units.ts';

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

const plain = (value: number, digits: number): string => String(Number(value.toFixed(digits)));

/** Turns what stands in the form over into the other units; what is no number stays as it is. */
export const turnForm = (form: HTMLFormElement, us: boolean): void => {
  for (const [name, [toUs, toMetric]] of Object.entries(TURNED)) {
    const field = form.elements.namedItem(name) as HTMLInputElement;
    const value = Number(field.value.replace(',', '.'));
    if (!field.value.trim() || Number.isNaN(value)) continue;
    field.value = plain(us ? toUs(value) : toMetric(value), 1);
  }
};

export const sayLength = (millimeters: number, us: boolean): string =>
  us ? String(Math.round(toInches(millimeters) * 4) / 4) : plain(millimeters / 10, 1);
export const sayArea = (squareMeters: number, us: boolean): string =>
  us ? `${plain(toSquareFeet(squareMeters), 1)} ft²` : `${plain(squareMeters, 2)} m²`;
export const sayFilm = (from: number, to: number, us: boolean): string => {
  const ends = us ? [from, to].map((end) => toMils(end).toFixed(1)) : [from, to].map((end) => end.toFixed(0));
  return `${ends[0] === ends[1] ? ends[0] : ends.join('–')} ${us ? 'mil' : 'µm'}`;
};
export const sayLiters = (liters: number, us: boolean): string => {
  if (!us)
    return liters < 1 ? `${Math.ceil(liters * 1000)} mL` : `${(Math.ceil(liters * 100) / 100).toFixed(2)} L`;
  const gallons = toGallons(liters);
  return gallons < 0.25
    ? `${Math.ceil(gallons * 128)} fl oz`
    : `${(Math.ceil(gallons * 40) / 10).toFixed(1)} qt`;
};
export const sayAir = (celsius: number, us: boolean): string =>
  us ? `${Math.round(toFahrenheit(celsius))} °F` : `${Math.round(celsius)} °C`;
