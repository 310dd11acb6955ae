/**
 * Times as people read them, each worked out by hand on the calendar: 24 November 2026 is a Tuesday. When clocks are put
 * back, and by how much, is what the time zone database (IANA, 2025) has of each place.
 */
import { describe, expect, it } from 'vitest';
import { sayInstant, sayMoment, saySpan, sayUntil, type TimeStyle, untilOf } from '#engine/clock.ts';

const UTC: TimeStyle = { timeZone: 'UTC', hour12: true };
const LONG: TimeStyle = { timeZone: 'UTC', hour12: false };
const at = (text: string) => Date.parse(`2026-11-${text}Z`);
const NOW = at('24T17:00');

describe('one time', () => {
  it.each([
    ['24T17:05', '5:05 PM', '17:05'],
    ['24T09:05', '9:05 AM', '09:05'],
    ['24T00:00', '12:00 AM', '00:00'],
    ['24T23:59', '11:59 PM', '23:59'],
    ['25T00:00', 'tomorrow 12:00 AM', 'tomorrow 00:00'],
    ['25T23:59', 'tomorrow 11:59 PM', 'tomorrow 23:59'],
    ['23T23:59', 'yesterday 11:59 PM', 'yesterday 23:59'],
    ['26T00:00', 'Thu, Nov 26, 12:00 AM', 'Thu, Nov 26, 00:00'],
    ['22T12:30', 'Sun, Nov 22, 12:30 PM', 'Sun, Nov 22, 12:30'],
  ])('%s', (when, short, long) => {
    expect(sayInstant(at(when), NOW, UTC)).toBe(short);
    expect(sayInstant(at(when), NOW, LONG)).toBe(long);
  });

  it('has its year where that is another one', () => {
    expect(sayInstant(Date.parse('2027-01-03T08:00Z'), NOW, UTC)).toBe('Sun, Jan 3, 2027, 8:00 AM');
    expect(sayInstant(Date.parse('2025-12-31T08:00Z'), NOW, LONG)).toBe('Wed, Dec 31, 2025, 08:00');
    // Of two days beside one another it needs none.
    const eve = Date.parse('2026-12-31T20:00Z');
    expect(sayInstant(Date.parse('2027-01-01T08:00Z'), eve, UTC)).toBe('tomorrow 8:00 AM');
  });
});

describe('from one time to another', () => {
  const said = (from: string, to: string, style = UTC) => saySpan(at(from), at(to), NOW, style);
  it.each([
    // Up to the minute below an hour, up to five of them from an hour on, up to thirty from six hours on.
    ['24T17:01:30', '24T17:03:10', '5:02–5:04 PM'],
    ['24T17:01', '24T18:00', '5:01–6:00 PM'],
    ['24T17:01', '24T18:01', '5:05–6:05 PM'],
    ['24T17:01', '24T23:00', '5:05–11:00 PM'],
    ['24T17:01', '24T23:01', '5:30–11:30 PM'],
    // What is rounded to one time is one.
    ['24T17:01:10', '24T17:01:50', '5:02 PM'],
    ['25T09:00', '25T09:30', 'tomorrow 9:00–9:30 AM'],
    // Across noon within the hour one mark is enough.
    ['25T11:40', '25T12:05', 'tomorrow 11:40–12:05 PM'],
    ['25T11:30', '25T12:30', 'tomorrow 11:30–12:30 PM'],
    ['25T11:30', '25T12:35', 'tomorrow 11:30 AM–12:35 PM'],
    ['25T08:00', '25T11:00', 'tomorrow 8:00–11:00 AM'],
    ['24T23:50', '25T00:20', '11:50 PM – tomorrow 12:20 AM'],
    ['25T23:50', '26T00:20', 'tomorrow 11:50 PM – Thu, Nov 26, 12:20 AM'],
  ])('%s to %s: %s', (from, to, words) => {
    expect(said(from, to)).toBe(words);
  });

  it('is a day where the hour would be a pretense: 30 hours wide, or 60 hours away', () => {
    expect(said('24T17:00', '25T22:59')).toBe('5:00 PM – tomorrow 11:00 PM');
    expect(said('24T17:00', '25T23:00')).toBe('Tue, Nov 24 – Wed, Nov 25');
    expect(said('27T04:59', '27T05:29')).toBe('Fri, Nov 27, 4:59–5:29 AM');
    expect(said('27T05:00', '27T05:30')).toBe('Fri, Nov 27');
    expect(said('27T05:00', '28T05:30')).toBe('Fri, Nov 27 – Sat, Nov 28');
  });

  it('needs no half of the day on a clock of 24 hours', () => {
    expect(said('24T17:01', '24T18:00', LONG)).toBe('17:01–18:00');
    expect(said('25T08:00', '25T13:00', LONG)).toBe('tomorrow 08:00–13:00');
  });
});

describe('until when', () => {
  const until = (from: string, to: string) => untilOf(at(from), at(to), NOW, UTC);
  it.each([
    ['24T17:30', '24T18:10', '6:10 PM', '5:30 PM'],
    ['25T09:00', '25T09:30', 'tomorrow 9:30 AM', '9:00 AM'],
    ['24T23:50', '25T00:20', 'tomorrow 12:20 AM', 'today 11:50 PM'],
    ['25T23:50', '26T00:20', 'Thu, Nov 26, 12:20 AM', 'tomorrow 11:50 PM'],
    // What may be over already is told by its end alone, and so is what comes at one time.
    ['24T17:00', '24T18:10', '6:10 PM', undefined],
    ['24T17:01', '24T18:10', '6:10 PM', '5:05 PM'],
    ['24T16:00', '24T18:10', '6:10 PM', undefined],
    ['24T18:09:10', '24T18:09:50', '6:10 PM', undefined],
    ['28T09:00', '29T09:00', 'Sun, Nov 29', 'Sat, Nov 28'],
    ['28T09:00', '28T12:00', 'Sat, Nov 28', undefined],
    ['24T16:00', '29T09:00', 'Sun, Nov 29', undefined],
    ['24T17:00', '29T09:00', 'Sun, Nov 29', undefined],
  ])('%s to %s', (from, to, late, early) => {
    expect(until(from, to)).toEqual({ late, early });
    expect(sayUntil(at(from), at(to), NOW, UTC)).toBe(early ? `${late}, ${early} at the earliest` : late);
  });
});

describe('the hour that comes twice', () => {
  it('is told by its zone, before and after, and no other hour is', () => {
    const style = { timeZone: 'America/New_York', hour12: true };
    const say = (time: string) => sayInstant(Date.parse(time), Date.parse('2026-11-01T04:10Z'), style);
    expect(say('2026-11-01T04:59Z')).toBe('12:59 AM');
    expect(say('2026-11-01T05:00Z')).toBe('1:00 AM EDT');
    expect(say('2026-11-01T06:00Z')).toBe('1:00 AM EST');
    expect(say('2026-11-01T06:59Z')).toBe('1:59 AM EST');
    expect(say('2026-11-01T07:00Z')).toBe('2:00 AM');
    expect(
      sayInstant(Date.parse('2026-11-01T05:30Z'), Date.parse('2026-11-01T04:10Z'), {
        ...style,
        hour12: false,
      }),
    ).toBe('01:30 EDT');
  });

  it('is half an hour on Lord Howe Island', () => {
    // 5 April 2026: at 2:00 the clocks there go back to 1:30, which is at 15:00 UTC the day before.
    const style = { timeZone: 'Australia/Lord_Howe', hour12: true };
    const say = (time: string) =>
      sayInstant(Date.parse(`2026-04-04T${time}Z`), Date.parse('2026-04-04T14:00Z'), style);
    expect(say('14:29')).toBe('1:29 AM');
    expect(say('14:45')).toBe('1:45 AM GMT+11');
    expect(say('15:15')).toBe('1:45 AM GMT+10:30');
    expect(say('15:30')).toBe('2:00 AM');
  });

  it('parts a range that begins or ends in it', () => {
    const style = { timeZone: 'America/New_York', hour12: true };
    const say = (from: string, to: string) =>
      saySpan(
        Date.parse(`2026-11-01T${from}Z`),
        Date.parse(`2026-11-01T${to}Z`),
        Date.parse('2026-11-01T04:10Z'),
        style,
      );
    expect(say('04:40', '05:10')).toBe('12:40 AM – 1:10 AM EDT');
    expect(say('06:40', '07:10')).toBe('1:40 AM EST – 2:10 AM');
    expect(say('07:10', '07:40')).toBe('2:10–2:40 AM');
  });
});

describe('a moment in a row of times', () => {
  const span = { from: at('24T18:00'), to: at('24T18:40') };
  it('is a range, and once it is over for sure, since when', () => {
    expect(sayMoment('recoat', span, NOW, UTC)).toBe('6:00–6:40 PM');
    expect(sayMoment('recoat', span, span.to - 60_000, UTC)).toBe('6:00–6:40 PM');
    expect(sayMoment('recoat', span, span.to, UTC)).toBe('since 6:40 PM');
    expect(sayMoment('recoat', span, at('25T10:00'), UTC)).toBe('since yesterday 6:40 PM');
  });
  it('that is a deadline is the early end alone', () => {
    expect(sayMoment('sand-if-beyond', span, NOW, UTC)).toBe('6:00 PM');
    expect(sayMoment('sand-if-beyond', span, span.from, UTC)).toBe('since 6:00 PM');
  });
});
