import { differenceCiede2000, lab65 } from 'culori';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cie76, ciede2000 } from '#engine/calc/color-difference.ts';
import { type Lab, labFromHex, labFromXyz } from '#engine/calc/lab.ts';
import differences from './color-difference.table.json' with { type: 'json' };
import { good, refusal } from './good.ts';
import labs from './lab.table.json' with { type: 'json' };
import { readTable } from './table.ts';

const pairs = readTable(differences);
const colors = readTable(labs);
type Pair = { lab1: Lab; lab2: Lab; de00?: number; de76?: number; pair?: number };

describe('difference', () => {
  test.each(pairs.rows<Pair>('sharma_pairs'))('pair $pair', ({ lab1, lab2, de00 = Number.NaN, pair }) => {
    for (const got of [ciede2000(lab1, lab2), ciede2000(lab2, lab1)]) {
      const allowed = pair === 14 ? [4.8045, 4.7461] : [de00];
      expect(Math.min(...allowed.map((want) => Math.abs(got - want)))).toBeLessThan(1e-4);
    }
  });

  test.each([...pairs.rows<Pair>('brilliant_yellow'), ...pairs.rows<Pair>('near_neutral_and_yellowing')])(
    '$lab1 and $lab2',
    ({ lab1, lab2, de00 = Number.NaN, de76 }) => {
      expect(Math.abs(ciede2000(lab1, lab2) - de00)).toBeLessThan(1e-4);
      if (de76 !== undefined) expect(Math.abs(cie76(lab1, lab2) - de76)).toBeLessThan(1e-4);
    },
  );

  test.each(pairs.rows<Pair>('cie76'))('CIE76: $lab1 and $lab2', ({ lab1, lab2, de76 = Number.NaN }) => {
    expect(Math.abs(cie76(lab1, lab2) - de76)).toBeLessThan(1e-4);
  });

  test('agrees with culori, is symmetric and never negative, over the whole of Lab', () => {
    const axis = fc.integer({ min: -100, max: 100 });
    const lab = fc.tuple(fc.integer({ min: 0, max: 100 }), axis, axis);
    const culori = differenceCiede2000();
    const mode = ([l, a, b]: Lab) => ({ mode: 'lab65', l, a, b }) as const;
    fc.assert(
      fc.property(lab, lab, (one, two) => {
        // Opposite hues exactly 180 degrees apart fall to either side by the last bit, as in pair 14.
        fc.pre(one[1] * two[2] !== one[2] * two[1]);
        const got = ciede2000(one, two);
        expect(got).toBeGreaterThanOrEqual(0);
        expect(got).toBeCloseTo(ciede2000(two, one), 9);
        expect(got).toBeCloseTo(culori(mode(one), mode(two)), 6);
      }),
    );
  });
});

describe('Lab', () => {
  test.each(colors.rows<{ xyz: [number, number, number]; lab: Lab }>('xyz_to_lab_d65'))(
    '$xyz',
    ({ xyz, lab }) => {
      for (const [index, got] of labFromXyz(xyz).entries())
        expect(Math.abs(got - (lab[index] ?? Number.NaN))).toBeLessThan(1e-4);
    },
  );

  test.each(colors.rows<{ hex: string; lab_d65: Lab }>('dark_srgb'))('$hex', ({ hex, lab_d65 }) => {
    for (const [index, got] of good(labFromHex(hex)).entries())
      expect(Math.abs(got - (lab_d65[index] ?? Number.NaN))).toBeLessThan(0.02);
  });

  test.each(colors.rows<{ Y: number; L: number }>('luminance_to_lightness'))('Y $Y → L* $L', ({ Y, L }) => {
    expect(Math.abs(labFromXyz([0, Y / 100, 0])[0] - L)).toBeLessThan(1e-4);
  });

  test('agrees with culori for every kind of color, and refuses what is not #rrggbb', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0xffffff }), (value) => {
        const hex = `#${value.toString(16).padStart(6, '0')}`;
        const [l, a, b] = good(labFromHex(hex));
        const want = lab65(hex);
        expect(Math.abs(l - want.l)).toBeLessThan(1e-3);
        expect(Math.abs(a - want.a)).toBeLessThan(1e-3);
        expect(Math.abs(b - want.b)).toBeLessThan(1e-3);
      }),
    );
    expect(refusal(labFromHex('navy'))).toBe(
      'The color (#rrggbb) was given as "navy", which is not one that this calculator knows.',
    );
  });
});

test('every group of rows is read', () => {
  expect([...pairs.unread(), ...colors.unread()]).toEqual([]);
});
