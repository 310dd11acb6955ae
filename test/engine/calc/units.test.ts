import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as units from '#engine/calc/units.ts';

/** Exact by definition: international inch, US gallon of 231 cubic inches, Fahrenheit's two fixed points. */
const KNOWN = [
  [units.toCelsius, units.toFahrenheit, 212, 100],
  [units.toCelsius, units.toFahrenheit, -40, -40],
  [units.toMicrometers, units.toMils, 1, 25.4],
  [units.toMillimeters, units.toInches, 1, 25.4],
  [units.toLiters, units.toGallons, 1, (231 * 2.54 ** 3) / 1000],
  [units.toMilliliters, units.toFluidOunces, 128, 231 * 2.54 ** 3],
  [units.toSquareMeters, units.toSquareFeet, 1, (12 * 0.0254) ** 2],
  [units.toSquareMetersPerLiter, units.toSquareFeetPerGallon, 1604.1666666666667, 39.370078740157],
] as const;

test.each(KNOWN)('%o and %o: %d is %d', (there, back, us, metric) => {
  expect(there(us)).toBeCloseTo(metric, 9);
  expect(back(metric)).toBeCloseTo(us, 8);
});

test.each(KNOWN)('%o and %o undo each other', (there, back) => {
  fc.assert(
    fc.property(fc.double({ min: -1e4, max: 1e4, noNaN: true }), (value) => {
      expect(back(there(value))).toBeCloseTo(value, 8);
    }),
  );
});
