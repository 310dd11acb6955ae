/**
 * Days, months and seasons counted on the fingers, for every pair of them. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { monthTimes, seasonTimes, weekdayTimes } from '#engine/hear/times/days.ts';
import type { Manner } from '#engine/hear/words/manner.ts';
import { read } from '../small-ear.ts';

const plain: Manner = {
  denied: () => undefined,
  notYet: () => false,
  feared: () => false,
  over: () => false,
};

describe('days of the week', () => {
  const DAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
  const days = (text: string, manner = plain) => weekdayTimes(read(text).words, manner)[0];
  it('are counted on from the day of the coat, a week where it is the same', () => {
    for (const [from, one] of DAYS.entries())
      for (const [to, other] of DAYS.entries()) {
        const apart = ((to - from + 6) % 7) + 1;
        expect(days(`I brushed it on ${one}, today is ${other}`)?.likely).toBe(24 * apart);
        expect(days(`I brushed it on ${one}, it is ${other}`)?.likely).toBe(24 * apart);
      }
  });
  it.each([
    'today is Friday',
    'its Friday',
    'now Friday',
    'tonight Friday',
    'it is Friday',
    'today and Friday',
  ])('today: brushed it on Monday, %s', (today) => {
    expect(days(`brushed it on Monday, ${today}`)).toMatchObject({ likely: 96, most: 110 });
  });
  it('a later day that is not today leaves a week open', () => {
    expect(days('brushed it on Monday. On Friday it was dull')).toMatchObject({ likely: 96, most: 96 + 168 });
    expect(days('brushed it on Monday. On Friday, a week on, it was dull')?.sure).toBeLessThan(0.7);
    expect(days('brushed it on Monday, dull')).toMatchObject({ most: 190 });
    expect(days('brushed it on Monday, dull')?.sure).toBeLessThan(0.7);
  });
  it.each([
    'the third went on on Monday',
    'that was on Monday',
    'it was Monday',
    'curing since Monday',
    'drying since last Monday',
    'I did the doors on Monday',
    'did it Monday',
    'poly on Monday',
    'I laid it Monday',
  ])('of the coat: %s', (text) => {
    expect(days(`${text}, today is Friday`)?.likely).toBe(96);
  });
  it.each([
    'saw it on Monday',
    'I brushed it and stacked it on Monday',
    'did well on Monday',
    'curing on Monday',
    'on Monday that was',
    'the can of mon',
    'in the sun',
  ])('of something else: %s', (text) => {
    expect(days(`${text}, today is Friday`)).toBeUndefined();
  });
  it.each(['until Monday', 'till Monday', 'next Monday', 'every Monday', 'my Monday', 'by Monday'])(
    'no day of a coat: brushed it %s',
    (text) => {
      expect(days(`brushed it ${text}`)).toBeUndefined();
    },
  );
  it('by a day something was there', () => {
    expect(days('brushed it on Monday. By Friday there were dots')?.likely).toBe(96);
    expect(days('brushed it on Monday, I want it by Friday')).toMatchObject({ most: 190 });
    expect(days('brushed it on Monday', { ...plain, notYet: () => true })).toBeUndefined();
  });
  it('short forms are days behind a word that calls for one', () => {
    for (const short of ['Wed', 'Fri', 'Mon', 'Sun']) {
      expect(days(`brushed it on ${short}, dull`)).toBeDefined();
      expect(days(`brushed it in ${short}, dull`)).toBeUndefined();
    }
    for (const short of ['Tues', 'Tue', 'Thur', 'Thurs'])
      expect(days(`brushed it ${short}, dull`)).toBeDefined();
  });
});

describe('months and seasons', () => {
  const MONTHS = [
    'January',
    'February',
    'March',
    'April',
    'May',
    'June',
    'July',
    'August',
    'September',
    'October',
    'November',
    'December',
  ];
  it('are counted on from the month of the coat', () => {
    for (const [from, one] of MONTHS.entries())
      for (const [to, other] of MONTHS.entries()) {
        const [found] = monthTimes(read(`brushed it in ${one}, it is ${other} now`).words);
        expect(found?.likely).toBe(from === to ? undefined : ((to - from + 12) % 12) * 730);
      }
    for (const [feast, month] of [
      ['Easter', 3],
      ['Thanksgiving', 10],
      ['Christmas', 11],
    ] as const)
      expect(monthTimes(read(`brushed it at ${feast}, its July now`).words)[0]?.likely).toBe(
        ((6 - month + 12) % 12) * 730,
      );
  });
  it.each(['delivered in May', 'moved in May', 'got it in May', 'that was in May', 'done in May'])(
    'of a coat that came so: %s',
    (text) => {
      expect(monthTimes(read(`${text}, it is July now`).words)[0]?.likely).toBe(1460);
    },
  );
  it.each(['saw it in May', 'brushed it, may be', 'brushed it. In May'])('of none: %s', (text) => {
    expect(monthTimes(read(`${text}, it is July now`).words)).toEqual([]);
  });
  const season = (text: string, manner = plain) => seasonTimes(read(text).words, manner)[0];
  it('a season that is named is over, last summer for a month at least', () => {
    for (const text of [
      'brushed it in spring',
      'brushed it since fall',
      'brushed it back winter',
      'done over Christmas',
      'redone during summer',
    ])
      expect(season(text)).toMatchObject({ least: 336, most: 9000 });
    expect(season('brushed it last summer')).toMatchObject({ least: 720 });
    for (const text of ['brushed it, in spring, it', 'saw it. Brushed it in autumn'])
      expect(season(text)).toBeDefined();
    for (const text of [
      'saw it in spring',
      'brushed it next spring',
      'brushed a spring',
      'brushed it last, spring',
      'brushed it. In spring',
    ])
      expect(season(text), text).toBeUndefined();
    expect(season('brushed it in spring', { ...plain, notYet: () => true })).toBeUndefined();
  });
  it('a year that is named is more than one past', () => {
    for (const text of [
      'brushed it in 2012',
      'brushed it since 2024',
      'had it since 2010',
      'owned since 1999',
      'built in 1960',
      'installed in 2001',
      'made in 2001',
      'bought in 2001',
    ])
      expect(season(text), text).toMatchObject({ least: 8760, likely: 9000 });
    for (const text of [
      'brushed it over 2012',
      'brushed it last 2012',
      'brushed it in 2025',
      'had it in 2010',
      'built in 1960. Brushed it',
      'brushed it in 2112',
      'saw it in 2012',
    ])
      expect(season(text), text).toBeUndefined();
  });
});
