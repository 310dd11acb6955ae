/** How the clock says a time: rounded up, with its day, its year and, where two hours look alike, its zone. */
import { expect, it } from 'vitest';
import { clockNow, type LaidCoat, sayInstant, sayNow, sayReasons, saySpan, sayUntil } from '#engine/clock.ts';
import { coat, HOUR, LAID, MINUTE, poly, running, STYLE } from './running-coat.ts';
import { WORDS } from './words.ts';

it('says until when in one line, noon, midnight and the early end behind it', () => {
  const label = (from: number, to: number) => ({ minutes: { touch: { from, to } } });
  const said = (over: Partial<LaidCoat>, now: number) =>
    sayNow(WORDS, clockNow(poly, { ...coat, ...over }, now), now, STYLE).verdict;
  expect(said({ label: label(100, 125) }, LAID + 12 * MINUTE)).toBe(
    'Hands off until 12:05 PM, 11:40 AM at the earliest',
  );
  expect(said({ label: label(100, 125) }, LAID + 110 * MINUTE)).toBe('Hands off until 12:05 PM');
  const late = Date.parse('2026-11-25T06:30:00Z');
  expect(said({ laidAt: late, label: label(20, 50) }, late)).toBe(
    'Hands off until tomorrow 12:20 AM, today 11:50 PM at the earliest',
  );
  expect(said({ laidAt: late, label: label(20, 50) }, late + 40 * MINUTE)).toBe('Hands off until 12:20 AM');
});

it('is not moved by a change to or from daylight-saving time', () => {
  const said = (laidAt: number, from: number, to: number) =>
    sayNow(
      WORDS,
      clockNow(poly, { ...coat, laidAt, label: { minutes: { touch: { from, to } } } }, laidAt),
      laidAt,
      STYLE,
    ).verdict;
  // Denver, 1 November 2026: at 08:00Z the clock goes from 2:00 AM back to 1:00 AM.
  expect(said(Date.parse('2026-11-01T05:30:00Z'), 180, 239)).toBe(
    'Hands off until tomorrow 2:29 AM, 1:30 AM MST at the earliest',
  );
  // Denver, 8 March 2026: at 09:00Z it goes from 2:00 AM on to 3:00 AM.
  expect(said(Date.parse('2026-03-08T08:30:00Z'), 60, 90)).toBe(
    'Hands off until 4:00 AM, 3:30 AM at the earliest',
  );
});

it('joins the reasons into one sentence', () => {
  expect(sayReasons(WORDS, [])).toBe('');
  expect(sayReasons(WORDS, ['weather'])).toBe('A range, because the weather is not that of the table.');
  expect(sayReasons(WORDS, ['product-varies', 'weather', 'thick-film'])).toMatch(/, .+ and .+\.$/);
});

it('gives the late end in large letters and the early one behind it', () => {
  const label = { minutes: { touch: { from: 100, to: 125 } } };
  const said = sayNow(WORDS, running({ label }), LAID, STYLE);
  expect(said.large).toBe('Hands off until 12:05 PM');
  expect(said.earliest).toBe('11:40 AM at the earliest');
});

it('names no time before it comes: both ends are rounded up', () => {
  const at = (minutes: number) => LAID + minutes * MINUTE;
  // Seven hours wide: steps of half an hour. 10:07 AM is not told as 10:00.
  expect(saySpan(at(7), at(427), LAID, STYLE)).toBe('10:30 AM–5:30 PM');
  expect(saySpan(at(7), at(8.2), LAID, STYLE)).toBe('10:07–10:09 AM');
});

it('names the year where it is not this one', () => {
  expect(sayInstant(Date.parse('2027-11-28T17:00:00Z'), LAID, STYLE)).toBe('Sun, Nov 28, 2027, 10:00 AM');
  expect(sayUntil(Date.parse('2026-12-30T17:00:00Z'), Date.parse('2027-01-09T17:00:00Z'), LAID, STYLE)).toBe(
    'Sat, Jan 9, 2027, Wed, Dec 30 at the earliest',
  );
});

it('tells the two hours apart that look alike when clocks are put back', () => {
  const newYork = { timeZone: 'America/New_York', hour12: true };
  // 1 November 2026: 1:30 AM comes at 05:30Z (EDT) and at 06:30Z (EST).
  const [first, second] = [Date.parse('2026-11-01T05:30:00Z'), Date.parse('2026-11-01T06:30:00Z')];
  expect(sayUntil(first + 20 * MINUTE, second - 7 * MINUTE, first, newYork)).toBe(
    '1:23 AM EST, 1:50 AM EDT at the earliest',
  );
  expect(saySpan(first + 20 * MINUTE, second - 7 * MINUTE, first, newYork)).toBe('1:50 AM EDT – 1:23 AM EST');
  expect(sayInstant(second + 3 * HOUR, second, newYork)).toBe('4:30 AM');
});
