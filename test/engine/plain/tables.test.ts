/** Small tools for tables: what every object has by birth is no entry, and what is left out stays out. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { entryOf, isKeyOf, isOneOf, keysOf } from '#engine/plain/entry-of.ts';
import { pick } from '#engine/plain/pick.ts';
import { DAY_MS as DAY, HOUR_MS as HOUR, MINUTE_MS as MINUTE } from '#engine/plain/time.ts';

const BY_BIRTH = ['constructor', 'toString', 'hasOwnProperty', '__proto__', 'valueOf'];

it('an entry is what the table has itself', () => {
  const table = { wet: 1, dry: 0, none: undefined as number | undefined };
  expect(entryOf(table, 'wet')).toBe(1);
  expect(entryOf(table, 'dry')).toBe(0);
  expect(isKeyOf(table, 'none')).toBe(true);
  for (const key of [...BY_BIRTH, 'gone', undefined]) {
    expect(entryOf(table, key)).toBeUndefined();
    expect(isKeyOf(table, key)).toBe(false);
  }
  expect(keysOf(table)).toEqual(['wet', 'dry', 'none']);
  expect(keysOf(Object.create(table) as object)).toEqual([]);
});

it('one of a list is known by itself, not by what looks like it', () => {
  expect(isOneOf(['1', '2'], '2')).toBe(true);
  expect(isOneOf(['1', '2'], 2)).toBe(false);
  expect(isOneOf([], undefined)).toBe(false);
});

it('what is picked is what was there of it, and nothing else', () => {
  fc.assert(
    fc.property(
      fc.dictionary(fc.constantFrom('a', 'b', 'c', 'd'), fc.option(fc.integer(), { nil: undefined })),
      (from: Record<string, number | undefined>) => {
        const picked: Record<string, number | undefined> = pick(from, 'a', 'c', 'e');
        for (const key of ['a', 'c']) {
          expect(picked[key]).toBe(from[key]);
          expect(key in picked).toBe(from[key] !== undefined);
        }
        expect(Object.keys(picked).filter((key) => key !== 'a' && key !== 'c')).toEqual([]);
      },
    ),
    { numRuns: 50 },
  );
});

it('an hour has sixty minutes of sixty seconds, a day 24 hours', () => {
  expect([MINUTE, HOUR, DAY]).toEqual([60 * 1000, 3600 * 1000, 86_400 * 1000]);
});
