/**
 * How an hour of the clock is told, form by form, and what looks like one and is none. How people tell the time is common
 * practice, no source. Phrases of our own.
 */
import { describe, expect, it } from 'vitest';
import { hoursByClock } from '#engine/hear/times/clock-times.ts';

const hours = (text: string) => hoursByClock(text)[0]?.value;

describe('an hour of the clock', () => {
  /** Each is eight in the morning. */
  it.each([
    '8 am',
    '8 a.m',
    '8am',
    '8 am',
    '8:00 am',
    '8:00am',
    'eight am',
    'eight in the morning',
    '8 this morning',
    '8 in the morning',
    "8 o'clock this morning",
    '8 oclock in the morning',
    '8 o clock, in the morning',
    '8, in the morning',
  ])('brushed it at %s, it is 11 am now', (time) => {
    expect(hours(`brushed it at ${time}, it is 11 am now`)).toBe(3);
  });
  it.each([
    'at',
    'around',
    'about',
    'by',
    'since',
    'till',
    'until',
    'near',
    'roughly',
    'like',
    'at about',
    'at around',
    'at like',
    'at almost',
    'at nearly',
  ])('brushed it %s 8, it is 11 now', (before) => {
    expect(hours(`brushed it ${before} 8, it is 11 now`)).toBe(3);
  });
  it.each([
    '.',
    ',',
    ';',
    '!',
    ')',
    ' and',
    ' now',
    ' this',
    ' in the shop',
    ' i',
    ' last',
    ' today',
    ' again',
    ' here',
    ' so',
    ' but',
    ' when',
    ' with',
    ' my',
    ' the',
    ' or',
    ' after',
    ' before',
  ])('brushed it at 8%s stands for an hour', (behind) => {
    expect(hours(`brushed it at 8${behind} then, it is 11 now`)).toBe(3);
  });
  it.each([' coats', ' doors', ' of them', '%', ' hours', ' degrees'])(
    'brushed it at 8%s does not',
    (behind) => {
      expect(hours(`brushed it at 8${behind} there, it is 11 now`)).toBeUndefined();
    },
  );
  it.each([
    'quarter past eight',
    'quarter after 8',
    '15 minutes past 8',
    '15 min after eight',
    '15 mins past 8',
    '8:15',
    'eight fifteen',
  ])('brushed it at %s, it is 9 now', (time) => {
    expect(hours(`brushed it at ${time}, it is 9 now`)).toBe(0.75);
  });
  it.each([
    'quarter to nine',
    'quarter till 9',
    '15 minutes to 9',
    '8:45',
    'eight forty five',
    'eight forty-five',
  ])('brushed it at %s, it is 9 now', (time) => {
    expect(hours(`brushed it at ${time}, it is 9 now`)).toBe(0.25);
  });
  it.each(['half past eight', 'half after 8', '8:30', 'eight thirty', '30 minutes past 8'])(
    'brushed it at %s, it is 9 now',
    (time) => {
      expect(hours(`brushed it at ${time}, it is 9 now`)).toBe(0.5);
    },
  );
  it.each([
    'hour',
    'hours',
    'hr',
    'hrs',
    'min',
    'day',
    'days',
    'weeks',
    'months',
    'years',
    'coats',
    'times',
    'percent',
    'degrees',
  ])('ten to 9 %s is no time of the clock', (unit) => {
    expect(hours(`brushed it ten to 9 ${unit}, it is 11 now`)).toBeUndefined();
  });
  it.each([
    ['breakfast', 8],
    ['lunch', 12.5],
    ['lunchtime', 12.5],
    ['teatime', 16.5],
    ['work', 17.5],
    ['dinner', 18.5],
    ['dinnertime', 18.5],
    ['supper', 18.5],
    ['suppertime', 18.5],
  ])('%s is about %d', (meal, hour) => {
    for (const before of ['at', 'since', 'after', 'before', 'around', 'about'])
      expect(hours(`brushed it ${before} ${meal}, it is 10 pm now`)).toBe(22 - Number(hour));
    expect(hours(`brushed it with ${meal}, it is 10 pm now`)).toBeUndefined();
  });
  it.each(['bedtime', 'bed time'])('%s is about 22', (meal) => {
    expect(hours(`brushed it at 8 pm, now ${meal}`)).toBe(2);
  });
  it.each([
    'afternoon',
    'this afternoon',
    'in the afternoon',
    'evening',
    'this evening',
    'pm',
    'p.m',
    'last night',
    'in the evening',
  ])('6 %s is of the second half of the day', (part) => {
    expect(hours(`brushed it at 6 ${part}, it is 8 pm now`)).toBe(2);
  });
  it.each([
    'ago',
    'days',
    'weeks',
    'months',
    'years',
    'week',
    'month',
    'year',
    'Monday',
    'Tuesday',
    'Wednesday',
    'Thursday',
    'Friday',
    'Saturday',
    'Sunday',
    'hours later',
    'hour later',
  ])('told of other days (%s) it is no span', (day) => {
    expect(hours(`brushed it ${day} at 8, it is 11 now`)).toBeUndefined();
  });
  it.each([
    'laid',
    'put',
    'brushed',
    'rolled',
    'sprayed',
    'shot',
    'applied',
    'coated',
    'wiped',
    'did',
    'finished',
    'quit',
    'stopped',
    'went on',
    'topped',
    'top coat',
    'topcoat',
    'coat',
    'clear',
    'hit it',
    'drying',
    'padded',
    'poured',
    'oiled',
    'waxed',
    'buffed',
  ])('is that of "%s"', (word) => {
    expect(hours(`it ${word} at 8, it is 11 now`)).toBe(3);
    if (word !== 'top coat') expect(hours(`it qu${word} at 8, it is 11 now`)).toBeUndefined();
  });
  it.each([
    'last night',
    'last nite',
    'last evening',
    'over night',
    'overnight',
    'got up',
    'woke',
    'this morning',
    'next morning',
    'next day',
  ])('over night (%s) it is evening and morning', (words) => {
    expect(hours(`brushed it at 9, it is 7 am now, ${words}`)).toBe(10);
  });
  it('without a night the nearest time of that name counts', () => {
    expect(hours('brushed it at 9, it is 7 am now')).toBe(10);
    expect(hours('brushed it at 5, it is 7 am now')).toBe(2);
    expect(hours('brushed it at 5 last night, it is 7 am now')).toBe(14);
  });
});
