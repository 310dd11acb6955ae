import { toInches, toSquareFeetPerGallon } from '../../calc/units.ts';
import type { Carried } from './carried.ts';
import { MILLIMETERS } from './size-tokens.ts';
import type { Coverage } from './told-coverage.ts';
import type { ToldFaces } from './told-faces.ts';

/** The parts of the plan that have a front and a back to turn. */
const TURNED = ['top', 'front'];

/** Sizes and coverage as the form of the plan takes them: centimeters or inches, m² a liter or sq ft a gallon. */
export const carriedAmount = (
  told: ToldFaces | undefined,
  coverage: Coverage | undefined,
  isMetric: boolean,
): Carried => {
  const digits = (value: number): string => String(Number(value.toFixed(1)));
  const inForm = (millimeters: number): string => digits(isMetric ? millimeters / 10 : toInches(millimeters));
  const parts = (told?.faces ?? []).map((one) => ({
    ...one,
    part: one.thing === 'front' || one.thing === 'side' ? one.thing : 'top',
  }));
  // The form has one size of each part, and no round ones.
  const fits =
    parts.every(({ wide }) => wide !== undefined) &&
    new Set(parts.map(({ part }) => part)).size === parts.length;
  const fields = (fits ? parts : []).flatMap(({ part, count, long, wide = 0, unit }) => [
    [`${part}-count`, String(count)],
    [`${part}-long`, inForm(long * MILLIMETERS[unit])],
    [`${part}-wide`, inForm(wide * MILLIMETERS[unit])],
    ...(told?.sides === 2 && TURNED.includes(part) ? [['both', part]] : []),
  ]);
  const [low] = coverage?.ends ?? [];
  return {
    ...((fields.length || coverage) && { units: isMetric ? 'metric' : 'us' }),
    ...Object.fromEntries(fields),
    ...(low !== undefined && { 'can-coverage': digits(isMetric ? low : toSquareFeetPerGallon(low)) }),
  };
};
