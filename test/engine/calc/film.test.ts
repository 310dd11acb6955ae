import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  coatsFor,
  dryFilmMicrometers,
  litersFor,
  squareMetersPerLiter,
  wetFilmFromCoverage,
  wetFilmMicrometers,
} from '#engine/calc/film.ts';
import { toMicrometers, toMils, toSquareFeetPerGallon, toSquareMetersPerLiter } from '#engine/calc/units.ts';
import json from './film.table.json' with { type: 'json' };
import { good, refusal, relativeError } from './good.ts';
import { readTable } from './table.ts';

const table = readTable(json);
type Tolerance = { abs_tol?: number; rel_tol?: number };
const within = (got: number, want: number, { abs_tol, rel_tol }: Tolerance) =>
  expect(Math.abs(got - want)).toBeLessThanOrEqual(abs_tol ?? (rel_tol ?? 0) * want);

test.each(
  table.rows<{ vs: number; dft_mil: number; te: number; ft2_per_gal: number } & Tolerance>('coverage_us'),
)('US: $vs solids, $dft_mil mil → $ft2_per_gal ft²/gal', (row) => {
  const area = good(squareMetersPerLiter(toMicrometers(row.dft_mil), row.vs, row.te));
  // The sources work with 1604 ft²·mil, which is 1604.17 rounded: the printed figures are that much smaller.
  within((toSquareFeetPerGallon(area) * 1604) / 1604.1667, row.ft2_per_gal, row);
});

test.each(table.rows<{ vs: number; dft_um: number; m2_per_l: number } & Tolerance>('coverage_metric'))(
  'metric: $vs solids, $dft_um µm → $m2_per_l m²/L',
  (row) => within(good(squareMetersPerLiter(row.dft_um, row.vs)), row.m2_per_l, row),
);

test.each(table.rows<{ vs: number; wft_um: number; dft_um: number }>('wet_to_dry'))(
  '$wft_um µm wet at $vs → $dft_um µm dry',
  ({ vs, wft_um, dft_um }) => {
    expect(relativeError(good(dryFilmMicrometers(wft_um, vs)), dft_um)).toBeLessThan(0.03);
    expect(relativeError(good(wetFilmMicrometers(dft_um, vs)), wft_um)).toBeLessThan(0.031);
  },
);

test.each(
  table.rows<{ ft2_per_gal: number; wft_mil: number; abs_tol_mil: number }>('thickness_from_coverage'),
)('$ft2_per_gal ft²/gal is $wft_mil mil wet', ({ ft2_per_gal, wft_mil, abs_tol_mil }) => {
  const wet = good(wetFilmFromCoverage(toSquareMetersPerLiter(ft2_per_gal)));
  expect(Math.abs(toMils(wet) - wft_mil)).toBeLessThan(abs_tol_mil);
});

describe('properties', () => {
  const micrometers = fc.double({ min: 1, max: 1000, noNaN: true });
  const solids = fc.double({ min: 0.1, max: 1, noNaN: true });

  test('wet to dry and back, in both unit systems', () => {
    fc.assert(
      fc.property(micrometers, solids, (wet, share) => {
        const dry = good(dryFilmMicrometers(wet, share));
        expect(relativeError(good(wetFilmMicrometers(dry, share)), wet)).toBeLessThan(1e-9);
        expect(relativeError(toMicrometers(toMils(dry)), dry)).toBeLessThan(1e-9);
        expect(relativeError(good(squareMetersPerLiter(dry, share)) * wet, 1000)).toBeLessThan(1e-9);
      }),
    );
  });

  test('enough coats, and not one too many', () => {
    fc.assert(
      fc.property(micrometers, fc.double({ min: 1, max: 100, noNaN: true }), (build, coat) => {
        const coats = good(coatsFor(build, coat));
        expect(coats * coat).toBeGreaterThanOrEqual(build * (1 - 1e-6));
        expect((coats - 1) * coat).toBeLessThan(build);
      }),
    );
  });
});

test('amount: 4.2 m², 3 coats at 10 m²/L (100 µm wet), 10 % lost — common practice, no source', () => {
  expect(good(litersFor(4.2, 3, 100, 0.1))).toBeCloseTo(1.4, 1);
});

test('refusals name the value and the range', () => {
  expect(refusal(dryFilmMicrometers(100, 1.2))).toBe(
    'The volume solids was given as 120 %; it must be between 1 % and 100 %. Check the number and its unit.',
  );
  expect(refusal(wetFilmFromCoverage(0))).toContain('between 0.5 m²/L and 1000 m²/L');
  expect(refusal(litersFor(4, 0, 100, 0))).toContain('number of coats');
});

test.each(table.rows<{ step_um: number; step_mil: number }>('comb_gauge'))(
  'a comb gauge steps by $step_um µm or $step_mil mil',
  ({ step_um, step_mil }) => expect(relativeError(toMils(step_um), step_mil)).toBeLessThan(0.03),
);

test.each(table.rows<{ from: string; to: string; factor: number }>('conversions'))(
  '1 $from is $factor $to',
  ({ from, factor }) => {
    const ours = from.startsWith('m2')
      ? toSquareFeetPerGallon(1)
      : toSquareFeetPerGallon(good(squareMetersPerLiter(toMicrometers(1), 1)));
    expect(relativeError(ours, factor)).toBeLessThan(1e-7);
  },
);

test('every group of rows is read', () => {
  expect(table.unread()).toEqual([]);
});
