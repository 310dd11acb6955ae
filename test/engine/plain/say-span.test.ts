import { expect, it } from 'vitest';
import { inUnit, sayLong, sayShort, type TimeUnit, unitOf } from '#engine/plain/say-span.ts';
import { sayEnds, spanOf } from '#engine/plain/span.ts';
import { DAY_HOURS, DAY_MIN, DAY_MS, HOUR_MIN, HOUR_MS, MINUTE_MS } from '#engine/plain/time.ts';

// The minute, the hour and the day beside the second: BIPM, The International System of Units, 9th edition, table 8.
it('counts units as the SI brochure does', () => {
  expect([MINUTE_MS, HOUR_MS, DAY_MS].map((unit) => unit / 1000)).toEqual([60, 3600, 86_400]);
  expect([HOUR_MIN, DAY_MIN, DAY_HOURS]).toEqual([60, 1440, 24]);
  expect((['min', 'h', 'day'] as const).map((unit) => inUnit(DAY_MIN, unit))).toEqual([1440, 24, 1]);
});

// Common practice, no source: cans say 90 minutes and 36 hours, nobody 2,160 minutes.
it.each([
  [0, 'h'],
  [0.1, 'min'],
  [119, 'min'],
  [120, 'h'],
  [2879, 'h'],
  [2880, 'day'],
] as const)('says %d minutes in %s', (minutes, unit) => {
  expect(unitOf(minutes)).toBe(unit);
});

it('takes hours as soon as it is told to', () => {
  expect([unitOf(89, 90), unitOf(90, 90)]).toEqual(['min', 'h']);
});

it.each([
  [[40, 40], undefined, '40 min'],
  [[0.5, 9.96], undefined, '0.5–10 min'],
  [[240, 600], undefined, '4–10 h'],
  [[30, 180], undefined, '0.5–3 h'],
  [[1440, 1440], 'day', '1 day'],
  [[1440, 4320], undefined, '1–3 days'],
  [[30_240, 43_200], undefined, '21–30 days'],
] as const satisfies readonly [readonly [number, number], TimeUnit | undefined, string][])(
  'says %j in short',
  (minutes, unit, words) => {
    expect(sayShort(spanOf(minutes), unit)).toBe(words);
  },
);

it('says both ends as one where they round alike', () => {
  expect(sayShort({ from: 61, to: 62 }, 'h', Math.round)).toBe('1 h');
  expect([sayEnds(4, 10), sayEnds('few', 'few')]).toEqual(['4–10', 'few']);
});

it('says a count in whole words', () => {
  expect([sayLong(1, 'min'), sayLong(1, 'day')]).toEqual(['1 minute', '1 day']);
  expect([sayLong(1, 'h'), sayLong(1.5, 'h'), sayLong(3, 'day'), sayLong(40, 'min')]).toEqual([
    '1 hour',
    '1.5 hours',
    '3 days',
    '40 minutes',
  ]);
});
