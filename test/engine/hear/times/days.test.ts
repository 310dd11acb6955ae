/**
 * Days of the week, months and seasons, counted on the fingers: from the day of the coat to the last day told of. A day
 * is told to half a day (14 hours). All sentences are our own; how people count is common practice, no source.
 */
import { describe, expect, it } from 'vitest';
import { fact } from '../hearing.ts';

const HOURS = 'hours-since-coat';
const value = (text: string) => fact(text, HOURS)?.value;
const range = (text: string) => fact(text, HOURS)?.range?.map(Number);

describe('from one day of the week to another', () => {
  it.each<[string, number]>([
    ['I brushed the poly on Monday and today is Wednesday', 48],
    ['I brushed the poly on Monday. It is Friday today', 96],
    ['I brushed the poly on monday, its tuesday', 24],
    ['varnished it Saturday, today is Sunday', 24],
    ['varnished it on Friday, it’s Monday now', 72],
    ['applied the last coat on Sunday. It is Saturday today', 144],
    ['I sprayed lacquer on Thursday. On Tuesday it was still soft', 120],
    ['I waxed it on Wednesday. Friday it was smeary', 48],
    ['coated it on Monday, today is Monday', 168],
    ['brushed it on Tues, today is Thurs', 48],
    // The last of several layings is the coat.
    ['first coat on Monday, second coat on Wednesday, today is Friday', 48],
    ['The last coat of varnish: that was on Saturday. Today is Tuesday.', 72],
  ])('%s: %i h', (text, hours) => {
    expect(value(text)).toBe(hours);
  });

  it('is told to half a day where today is named, and to a week where a later day is', () => {
    expect(range('I brushed the poly on Monday and today is Wednesday')).toEqual([34, 62]);
    expect(range('I sprayed lacquer on Thursday. On Tuesday it was still soft')).toEqual([106, 288]);
    const sure = (text: string) => fact(text, HOURS)?.sure ?? 0;
    expect(sure('I brushed the poly on Monday and today is Wednesday')).toBeGreaterThan(
      sure('I sprayed lacquer on Thursday. On Tuesday it was still soft'),
    );
  });

  it('one day alone is within the week', () => {
    expect(range('I brushed the poly on Monday and it is tacky')).toEqual([16, 190]);
  });

  it.each<[string, number]>([
    ['I varnished it Monday morning. Monday afternoon it was hazy', 6],
    ['I varnished it Monday morning. Monday evening it was hazy', 10],
    ['I varnished it Monday morning. Monday night it was hazy', 13],
    ['I varnished it Monday noon. Monday evening it was hazy', 7],
    ['I varnished it Monday afternoon. Monday night it was hazy', 7],
    ['I varnished it Monday night. Monday morning it was hazy', 168],
  ])('%s: %i h, by nine, noon, three, seven and ten', (text, hours) => {
    expect(value(text)).toBe(hours);
  });

  it('between parts of a day it may be half so long or five hours longer', () => {
    expect(range('I varnished it Monday morning. Monday evening it was hazy')).toEqual([5, 15]);
  });

  it.each([
    'I need it by Friday, I brushed poly on it',
    'I will brush the poly next Saturday',
    'I varnish every Monday',
    'it has been in the sun, I brushed poly on it',
    'I wed in this hall and brushed poly on the floor',
    'I brush poly until Sunday',
    'I am going to varnish it on Monday',
  ])('%s: none', (text) => {
    expect(value(text)).toBeUndefined();
  });

  it('a short form is a day behind a word that calls for one', () => {
    expect(value('brushed the poly on Wed. Its Fri')).toBe(48);
    expect(value('varnished it last Fri, its Sun')).toBe(48);
  });
});

describe('a season, a month or a year', () => {
  it.each<[string, readonly [number, number]]>([
    ['I varnished it in spring and it is sticky', [336, 9000]],
    ['I varnished it last summer and it is sticky', [720, 9000]],
    ['I varnished it back in October and it peels', [336, 9000]],
    ['I refinished it over Christmas and it is dull', [336, 9000]],
    ['varnished the deck during winter', [336, 9000]],
    ['varnished in 2012 and it peels', [8760, 9000]],
    ['varnished in 1998 and it peels', [8760, 9000]],
    ['I have had it since 2010 and it peels', [8760, 9000]],
    ['the cabinets were installed in 2012 and peel', [8760, 9000]],
  ])('%s', (text, wanted) => {
    expect(range(text)).toEqual(wanted);
  });

  it.each([
    'I like summer',
    'the spring in the chair broke, I varnished the frame',
    'I will varnish it in spring',
    'varnished with a 2012 can of it',
    'painted walls in spring were nice to see',
  ])('%s: none', (text) => {
    const found = fact(text, HOURS);
    expect(found === undefined || found.sure < 0.7).toBe(true);
  });

  // A month is 730 hours, and told to 0.9 of one.
  it.each<[string, number]>([
    ['finished it in November, it is March now', 4],
    ['I varnished it in May, now in August it is soft', 3],
    ['delivered in October, it is December now and it peels', 2],
    ['varnished it at Easter, it is July now', 3],
    ['finished it at Thanksgiving, it is January now', 2],
    ['finished it at Christmas, it is February now', 2],
    ['varnished it in December, it is January now', 1],
  ])('%s: %i months', (text, months) => {
    expect(value(text)).toBe(months * 730);
    const got = range(text);
    expect(got?.[0]).toBeCloseTo((months - 0.9) * 730, 2);
    expect(got?.[1]).toBeCloseTo((months + 0.9) * 730, 2);
  });
});
