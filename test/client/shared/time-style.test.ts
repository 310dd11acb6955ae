/** 12 or 24 hours: as the region of the device has it, unless she chose. */
import { expect, it } from 'vitest';
import { sayInstant, saySpan } from '#engine/clock.ts';
import { hour12Of } from '../../../site/client/shared/time-style.ts';

const AT = Date.UTC(2026, 10, 30, 21, 30);
const regionOf = (locale: string) => () =>
  new Intl.DateTimeFormat(locale, { hour: 'numeric' }).resolvedOptions().hour12 ?? true;

// By CLDR: the US counts to twelve, the UK and Germany to twenty-four.
it.each([
  ['en-US', '9:30 PM', '9:30–10:00 PM'],
  ['en-GB', '21:30', '21:30–22:00'],
  ['de-DE', '21:30', '21:30–22:00'],
])('says of %s %s', (locale, says, span) => {
  const style = { timeZone: 'UTC', hour12: hour12Of(undefined, regionOf(locale)) };
  expect(sayInstant(AT, AT, style)).toBe(says);
  expect(saySpan(AT, AT + 30 * 60_000, AT, style)).toBe(span);
  expect(hour12Of('', regionOf(locale))).toBe(style.hour12);
  // A choice goes before it.
  expect(hour12Of('12', regionOf(locale))).toBe(true);
  expect(hour12Of('24', regionOf(locale))).toBe(false);
});
