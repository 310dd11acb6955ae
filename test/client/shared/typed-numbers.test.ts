/** Numbers as people type them: with a unit, with another of the same measure, as a fraction. */
import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { COAT_FIELDS } from '../../../site/client/clock/fields.ts';
import { PIECE_FIELDS } from '../../../site/client/jobs/parts/piece-form.ts';
import { PLAN_FIELDS } from '../../../site/client/schedule/fields.ts';
import { type Field, neededNumber, optionalNumber } from '../../../site/client/shared/form/fields.ts';
import type { Units } from '../../../site/client/shared/form/units.ts';

/** A field, whatever it reads. */
type AnyField = {
  readonly schema: (units: Units) => v.GenericSchema<string, unknown>;
  readonly plain?: Field<never>['plain'];
};
/** What a field reads, or the sentence of its fault. */
const read = (field: AnyField, text: string, units: Units = 'us'): unknown => {
  const found = v.safeParse(field.schema(units), text, { abortPipeEarly: true });
  return found.success ? found.output : found.issues[0].message;
};
const side = PLAN_FIELDS['top-long'];

describe('a number with its own unit', () => {
  it.each<[keyof typeof COAT_FIELDS, string, string]>([
    ['humidity', '50%', '50'],
    ['humidity', '50 %', '50'],
    ['humidity', '50 percent', '50'],
    ['humidity', '45% RH', '45'],
    ['air', '70F', '70'],
    ['air', '70 °F', '70'],
    ['air', '70 ℉', '70'],
    ['air', '70 degrees', '70'],
    ['air', '70°', '70'],
    ['air', '70 deg. F', '70'],
    ['air', '68,5 degrees Fahrenheit', '68.5'],
    ['amount', '4 fl. oz', '4'],
    ['area', '10 sq. ft.', '10'],
    ['area', '10 ft2', '10'],
    ['area', '1 200 square feet', '1200'],
    ['label-recoat', '2 hrs', '2'],
    ['label-cure', '21 days', '21'],
    ['ago', '20 min', '20'],
  ])('in %s takes “%s” as %s', (name, text, plain) => {
    expect(COAT_FIELDS[name].plain?.(text, 'us')).toEqual({ text: plain });
  });
  it('leaves a number alone as it stands', () => {
    for (const text of ['70', ' 70 ', '68,5', '1 200', '', 'warm', '-', '70/50'])
      expect(COAT_FIELDS.air.plain?.(text, 'us')).toBeUndefined();
  });
});

describe('a fraction', () => {
  it.each([
    ['1/2', 0.5],
    ['1 1/2', 1.5],
    ['1-1/2', 1.5],
    ['1½', 1.5],
    ['½', 0.5],
    ['23 5/8 in', 23.625],
    ['23 5/8"', 23.625],
    ['15/16', 0.9375],
  ])('is read: %s', (text, inches) => expect(read(side, text)).toBeCloseTo(inches * 2.54, 9));
  it.each(['11/2', '50/50', '3/7', '1/0', '1 /', '/2', '10/12/26'])('is none: %s', (text) =>
    expect(read(side, text)).toMatch(/^Give length and width as a number, or leave it empty\.$/),
  );
});

// By definition: 0 °C is 32 °F, an inch 2.54 cm, a foot 12 inches, a US gallon 128 fluid ounces of 29.5735… mL.
describe('a number in another unit', () => {
  it.each<[string, AnyField, string, Units, string, string]>([
    ['air', COAT_FIELDS.air, '21 °C', 'us', '70', '21 °C is 70 °F.'],
    ['air', COAT_FIELDS.air, '70 F', 'metric', '21', '70 F is 21 °C.'],
    ['night', PIECE_FIELDS.night, '10 C', 'us', '50', '10 C is 50 °F.'],
    ['night below nothing', PLAN_FIELDS.night, '−5 °C', 'us', '23', '−5 °C is 23 °F.'],
    ['side', side, '60 cm', 'us', '23.6', '60 cm is 23.6 in.'],
    ['side', side, '2 ft 6 in', 'us', '30', '2 ft 6 in is 30 in.'],
    ['side', side, '5\' 6"', 'us', '66', '5\' 6" is 66 in.'],
    ['side', side, '1.2 m', 'metric', '120', '1.2 m is 120 cm.'],
    ['amount', COAT_FIELDS.amount, '1 quart', 'us', '32', '1 quart is 32 fl oz.'],
    ['area', COAT_FIELDS.area, '1 m²', 'us', '10.8', '1 m² is 10.8 ft².'],
    ['covers', PLAN_FIELDS['can-coverage'], '10 m² per L', 'us', '407.5', '10 m² per L is 407.5 ft²/gal.'],
    ['recoat', PLAN_FIELDS['can-recoat'], '90 min', 'us', '1.5', '90 min is 1.5 h.'],
    ['recoat', PLAN_FIELDS['can-recoat'], '1 h 30 min', 'us', '1.5', '1 h 30 min is 1.5 h.'],
    ['cure', COAT_FIELDS['label-cure'], '3 weeks', 'metric', '21', '3 weeks is 21 days.'],
    ['base age', PLAN_FIELDS['base-age'], '2 days', 'us', '48', '2 days is 48 h.'],
    ['ago', COAT_FIELDS.ago, '1/2 h', 'us', '30', '1/2 h is 30 min.'],
  ])('%s: “%s”', (_, field, text, units, plain, says) => {
    expect(field.plain?.(text, units)).toEqual({ text: plain, says });
  });
  it('is held to what can be, as any number', () => {
    expect(read(COAT_FIELDS.air, '70 °C')).toMatch(/lies between .* Check the number and its unit/);
  });
});

describe('what is not sure', () => {
  it.each([
    [COAT_FIELDS.air, '50 %', 'Give the air temperature as a number alone, in °F.'],
    [COAT_FIELDS.air, '60-70', 'Give one number for the air temperature, not a range.'],
    [
      COAT_FIELDS.humidity,
      '21 °C',
      'Give the humidity as a number alone, in %. No meter: 50 % is a fair guess.',
    ],
    [
      COAT_FIELDS['label-recoat'],
      '2 to 4 h',
      'Give one number for the time on the can, not a range, or leave it empty.',
    ],
    [
      COAT_FIELDS['label-cure'],
      '1 m',
      'Give the time on the can as a number alone, in days, or leave it empty.',
    ],
    [COAT_FIELDS.coat, '2 coats', 'Give the number of the coat as a number alone, or leave it empty.'],
    [COAT_FIELDS.coat, '1 1/2', 'Give a whole number: the number of the coat.'],
  ] as const)('%# is told: “%s”', (field, text, says) => expect(read(field, text)).toBe(says));
});

const NUMBERS: readonly AnyField[] = [COAT_FIELDS, PLAN_FIELDS, PIECE_FIELDS]
  .flatMap((fields): readonly AnyField[] => Object.values(fields))
  .filter(({ plain }) => plain !== undefined);
const anyField = fc.constantFrom(...NUMBERS);
const anyUnits = fc.constantFrom<Units>('us', 'metric');
/** Texts of digits, blanks, signs, strokes and units in any order. */
const anyText = fc
  .array(
    fc.oneof(
      fc.nat({ max: 300 }).map(String),
      fc.constantFrom(
        ...' .,-−/½²°"%'.split(''),
        'C',
        'F',
        'in',
        'ft',
        'cm',
        'm',
        'h',
        'min',
        'oz',
        'to',
        'x',
      ),
    ),
    { maxLength: 8 },
  )
  .map((parts) => parts.join(''));

describe('whatever is typed', () => {
  it('what stands in the field then is a number alone, and means what was typed, but for what is rounded', () => {
    fc.assert(
      fc.property(anyField, anyUnits, anyText, (field, units, text) => {
        const plain = field.plain?.(text, units);
        if (!plain) return;
        expect(plain.text).toMatch(/^-?\d+(\.\d+)?$/);
        expect(field.plain?.(plain.text, units)).toBeUndefined();
        const [typed, then] = [text, plain.text].map((one) => read(field, one, units));
        if (typeof typed !== 'number' || typeof then !== 'number') return;
        const [one, half] = ['1', '1.5'].map((step) => Number(read(field, step, units)));
        if (!plain.says) expect(then).toBeCloseTo(typed, 3);
        else if (one !== undefined && half !== undefined && !Number.isNaN(half - one))
          expect(Math.abs(then - typed)).toBeLessThanOrEqual(Math.abs(half - one) + 1e-9);
      }),
      { numRuns: 3000 },
    );
  });
  it('a number with the unit that the field is in is that number', () => {
    const air = neededNumber({ what: 'the air', least: -1000, most: 1000, quantity: 'degrees' });
    const time = optionalNumber({ what: 'the time', least: 0, most: 1e6, unit: 'hours', times: 60 });
    fc.assert(
      fc.property(fc.integer({ min: -99, max: 99 }), anyUnits, fc.constantFrom('', ' '), (n, units, gap) => {
        const sign = units === 'us' ? 'F' : 'C';
        for (const tail of [sign, `°${sign}`, '°', sign.toLowerCase(), ` degrees ${sign}`])
          expect(read(air, `${n}${gap}${tail}`, units)).toBe(read(air, String(n), units));
        const hours = Math.abs(n);
        expect(read(time, `${hours * 60} min`)).toBe(read(time, `${hours}${gap}h`));
      }),
    );
  });
});
