import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clearTransmittance, hazeDifference, reflectanceOver } from '#engine/calc/film-reflectance.ts';
import { WHITE } from '#engine/calc/lab.ts';
import { yellowness } from '#engine/calc/yellowness.ts';
import json from './film-reflectance.table.json' with { type: 'json' };
import { good, refusal } from './good.ts';
import { readTable } from './table.ts';
import yellow from './yellowness.table.json' with { type: 'json' };

const films = readTable(json);
const indices = readTable(yellow);

type Published = { K: number; S: number; X: number; rg: number; r: number; abs_tol: number };
test.each(films.rows<Published>('published_reflectance'))(
  'K $K, S $S, X $X over $rg → $r',
  ({ K, S, X, rg, r, abs_tol }) => {
    const got = good(reflectanceOver({ absorption: K * X, scattering: S * X }, rg));
    expect(Math.abs(got - r)).toBeLessThanOrEqual(abs_tol);
  },
);

type Layer = {
  K: number;
  S: number;
  X: number;
  r_black: number;
  r_over_4pct: number;
  r_over_80pct: number;
  t_film: number;
};
test.each(films.rows<Layer>('layers'))('layer K $K, S $S, X $X', (row) => {
  const over = (ground: number) =>
    good(reflectanceOver({ absorption: row.K * row.X, scattering: row.S * row.X }, ground));
  expect(over(0)).toBeCloseTo(row.r_black, 5);
  expect(over(0.04)).toBeCloseTo(row.r_over_4pct, 5);
  expect(over(0.8)).toBeCloseTo(row.r_over_80pct, 5);
  // What comes back from a ground passed the film twice: R = R₀ + T² Rg ÷ (1 − R₀ Rg).
  expect(over(0.8)).toBeCloseTo(row.r_black + (row.t_film ** 2 * 0.8) / (1 - row.r_black * 0.8), 4);
});

type Haze = { y_ground: number; sx: number; y: number; de00_from_clear: number };
test.each(films.rows<Haze>('haze_over_dark'))(
  'haze $sx over $y_ground',
  ({ y_ground, sx, y, de00_from_clear }) => {
    expect(good(reflectanceOver({ absorption: 0, scattering: sx }, y_ground))).toBeCloseTo(y, 5);
    expect(Math.abs(good(hazeDifference(sx, y_ground)) - de00_from_clear)).toBeLessThan(0.001);
  },
);

type Clear = { t_single_pass_at_1: number; thickness: number; t_single_pass: number; double_pass: number };
test.each(films.rows<Clear>('beer_lambert'))('$thickness coats of $t_single_pass_at_1', (row) => {
  const { t_single_pass_at_1: one, thickness } = row;
  expect(good(clearTransmittance(one, thickness))).toBeCloseTo(row.t_single_pass, 5);
  const absorption = -Math.log(one) * thickness;
  expect(good(reflectanceOver({ absorption, scattering: 0 }, 1))).toBeCloseTo(row.double_pass, 5);
});

type Index = { XYZ: [number, number, number]; yi: number };
test.each(indices.rows<Index>('yellowness'))('XYZ $XYZ is $yi yellow', ({ XYZ: [x, y, z], yi }) => {
  expect(Math.abs(good(yellowness([x / 100, y / 100, z / 100])) - yi)).toBeLessThan(0.01);
});

test('over any ground a thicker film comes nearer to its own full color and never passes it; white is not yellow', () => {
  const part = fc.double({ min: 0.01, max: 2, noNaN: true });
  fc.assert(
    fc.property(part, part, fc.double({ min: 0, max: 1, noNaN: true }), (k, s, ground) => {
      const full = 1 + k / s - Math.sqrt((k / s) ** 2 + (2 * k) / s);
      const left = [0.5, 1, 2, 4].map((times) =>
        Math.abs(good(reflectanceOver({ absorption: k * times, scattering: s * times }, ground)) - full),
      );
      for (const [index, off] of left.entries())
        if (index > 0) expect(off).toBeLessThanOrEqual((left[index - 1] ?? 0) + 1e-12);
    }),
  );
  // The coefficients have four decimals, so white is zero to a few hundredths.
  expect(Math.abs(good(yellowness(WHITE)))).toBeLessThan(0.05);
  expect(refusal(reflectanceOver({ absorption: 0, scattering: 0.1 }, 1.5))).toContain(
    'reflectance of the ground was given as 150 %',
  );
});

test('every group of rows is read', () => {
  expect([...films.unread(), ...indices.unread()]).toEqual([]);
});
