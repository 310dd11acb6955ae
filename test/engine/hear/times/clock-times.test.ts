/**
 * Hours between two times of the clock, reckoned on a clock of 24 hours. Sentences of our own.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hoursByClock } from '#engine/hear/times/clock-times.ts';

describe('hours by the clock', () => {
  const hours = (text: string) => {
    const [found] = hoursByClock(text);
    return found && { value: Number(found.value), range: found.range };
  };
  const said = (minutes: number) => {
    const hour = Math.floor(minutes / 60) % 24;
    const rest = minutes % 60;
    return `${hour % 12 || 12}${rest ? `:${String(rest).padStart(2, '0')}` : ''} ${hour < 12 ? 'am' : 'pm'}`;
  };
  it('are those of a 24-hour clock, over midnight too', () => {
    fc.assert(
      fc.property(fc.nat({ max: 95 }), fc.integer({ min: 1, max: 95 }), (start, more) => {
        const text = `brushed it at ${said(start * 15)}, it is ${said((start + more) * 15)} now`;
        const found = hours(text);
        expect(found?.value, text).toBeCloseTo((more * 15) / 60, 9);
        expect(found?.range?.[0]).toBeLessThanOrEqual((more * 15) / 60);
        expect(found?.range?.[1]).toBeGreaterThanOrEqual((more * 15) / 60);
      }),
      { numRuns: 120 },
    );
  });
  it.each([
    ['half past eight', 'quarter to eleven', 2.25],
    ['ten to nine', 'ten past ten', 1.33],
    ['twenty after two', 'quarter till four', 1.42],
    ['five minutes before six', '7 o’clock', 1.08],
    ['noon', '3 pm', 3],
    ['midday', '3 pm', 3],
    ['midnight', '6 am', 6],
    ['nine', 'eleven', 2],
    ['11', '2', 3],
    ['seven thirty', 'nine fifteen', 1.75],
    ['seven forty-five', 'nine', 1.25],
    ['7 in the morning', 'noon', 5],
    ['9 p.m.', '7 a.m.', 10],
    ['10 last night', '7 this morning', 9],
    ['2 last night', '7 this morning', 5],
    ['8 this evening', '10 tonight', 2],
  ])('brushed it at %s, it is %s now: %d', (from, to, value) => {
    expect(hours(`brushed it at ${from}, it is ${to} now`)?.value).toBeCloseTo(value, 1);
  });
  it('of meals are told as loosely as they are', () => {
    const found = hours('brushed it after breakfast, it is noon now');
    expect(found?.value).toBeCloseTo(4, 0);
    expect((found?.range?.[1] ?? 0) - (found?.range?.[0] ?? 0)).toBeGreaterThan(2);
    expect(hours('brushed it after lunch, now it is 6 pm')?.value).toBeCloseTo(5.5, 0);
  });
  it('since yesterday are a day more', () => {
    expect(hours('brushed it yesterday at 6 pm, it is 8 am now')?.value).toBe(14);
    expect(hours('brushed it yesterday at 8 am, it is 8 am now')?.value).toBe(24);
    expect(hours('brushed it yesterday at 8 am, it is 6 pm now')?.value).toBe(34);
    expect(hours('brushed it yesterday at 8, it is 6 now')).toBeUndefined();
  });
  it('are those from the laying, and to now', () => {
    expect(hours('up at 6 am, brushed it at 8 am, it is 11 am now')?.value).toBe(3);
    expect(hours('it is 11 am now, I brushed it at 8 am')?.value).toBe(3);
    expect(hours('brushed it at 8 am and at 11 am it was dull')?.value).toBe(3);
    expect(hours('at 8 am the coat went on, then at 11 am it was dull')?.value).toBe(3);
  });
  it.each([
    'brushed it at 8 am',
    'got up at 8 am, it is 11 am now',
    'brushed it two days ago at 8 am, it is 11 am now',
    'brushed it on monday at 8 am, it is 11 am now',
    'brushed it at 13, it is 15 now',
    'brushed it with 8, it is 11 coats now',
    'brushed 8 of 11',
    '',
  ])('%s: none', (text) => {
    expect(hours(text)).toBeUndefined();
  });
});
