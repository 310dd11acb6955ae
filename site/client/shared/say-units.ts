import { sayFilm as filmIn } from '#engine/calc/say-film.ts';
import { toFahrenheit, toGallons, toInches, toSquareFeet } from '#engine/calc/units.ts';
import { writeNumber } from './form/number.ts';
import type { Units } from './form/units.ts';

/** The air of a coat, the chosen unit first. */
export const sayAir = (
  { celsius, relativeHumidity }: { readonly celsius: number; readonly relativeHumidity: number },
  units: Units = 'us',
): string => {
  const [us, metric] = [sayWholeDegrees(celsius, true), sayWholeDegrees(celsius, false)];
  const both = units === 'us' ? `${us} (${metric})` : `${metric} (${us})`;
  return `${both}, ${Math.round(relativeHumidity * 100)} %`;
};

export const sayLength = (millimeters: number, us: boolean): string =>
  us ? String(Math.round(toInches(millimeters) * 4) / 4) : writeNumber(millimeters / 10, 1);
export const sayArea = (squareMeters: number, us: boolean): string =>
  us ? `${writeNumber(toSquareFeet(squareMeters), 1)} ft²` : `${writeNumber(squareMeters, 2)} m²`;
export const sayFilm = (from: number, to: number, us: boolean): string =>
  filmIn(from, to, us ? 'us' : 'metric');
export const sayLiters = (liters: number, us: boolean): string => {
  if (!us)
    return liters < 1 ? `${Math.ceil(liters * 1000)} mL` : `${(Math.ceil(liters * 100) / 100).toFixed(2)} L`;
  const gallons = toGallons(liters);
  return gallons < 0.25
    ? `${Math.ceil(gallons * 128)} fl oz`
    : `${(Math.ceil(gallons * 40) / 10).toFixed(1)} qt`;
};
export const sayWholeDegrees = (celsius: number, us: boolean): string =>
  us ? `${Math.round(toFahrenheit(celsius))} °F` : `${Math.round(celsius)} °C`;
