import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packModel, unpackModel } from '#engine/find/model.ts';
import { pack, packRows, unpack, unpackRows } from '#engine/find/pack.ts';

const number = fc.integer({ min: 0, max: 55_039 });
/** Rows as the search has them: places that rise, and whole numbers that may be below nothing. */
const row = fc
  .uniqueArray(fc.tuple(fc.integer({ min: 0, max: 500 }), fc.integer({ min: -300, max: 300 })), {
    selector: ([place]) => place,
    maxLength: 30,
  })
  .map((pairs) => pairs.sort(([a], [b]) => a - b).flat());
const word = fc.string({ unit: fc.constantFrom(...'abcdefg'), minLength: 1, maxLength: 3 });

describe('numbers as text', () => {
  it('come back as they were, also through JSON, a sign each', () => {
    fc.assert(
      fc.property(fc.array(number), (numbers) => {
        const text = pack(numbers);
        expect(text).toHaveLength(numbers.length);
        expect(unpack(JSON.parse(JSON.stringify(text)))).toEqual(numbers);
        expect(unpack(Buffer.from(text, 'utf8').toString('utf8'))).toEqual(numbers);
      }),
    );
  });

  it('escape nothing that JSON escapes', () => {
    const all = pack([...Array(92).keys()]);
    expect(JSON.stringify(all)).toBe(`"${all}"`);
  });

  it('refuse what is no whole number in range', () => {
    for (const wrong of [-1, 0.5, 55_040, Number.NaN]) expect(() => pack([wrong])).toThrow(RangeError);
  });

  it('come back as rows of places and values', () => {
    fc.assert(
      fc.property(fc.array(row), (rows) => {
        expect(unpackRows(packRows(rows))).toEqual(rows);
      }),
    );
  });
});

describe('a learned model', () => {
  it('gives every feature its own row again, and every word of kin its groups, whether the terms know the stems or not', () => {
    const groups = fc
      .uniqueArray(fc.nat({ max: 300 }), { minLength: 1 })
      .map((list) => list.sort((a, b) => a - b));
    const feature = fc.oneof(
      word,
      fc.tuple(word, word).map((pair) => pair.join(' ')),
    );
    fc.assert(
      fc.property(
        fc.uniqueArray(word),
        fc.uniqueArray(fc.tuple(feature, row), { selector: ([name]) => name, minLength: 1 }),
        fc.uniqueArray(fc.tuple(feature, groups), { selector: ([name]) => name }),
        (terms, learned, kin) => {
          const model = { features: learned.map(([name]) => name), weights: learned.map(([, row]) => row) };
          const packed = packModel({ ...model, bias: [] }, new Map(kin), terms);
          const { features, weights, kin: told } = unpackModel(packed, terms);
          expect([...told].sort()).toEqual([...kin].sort());
          expect(features.size).toBe(learned.length);
          for (const [name, row] of learned) expect(weights[features.get(name) ?? -1]).toEqual(row);
        },
      ),
    );
  });
});
