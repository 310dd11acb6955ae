/** Spoken lengths of time, reckoned by hand; a time is told to a fifth less and a third more. Sentences of our own. */
import { describe, expect, it } from 'vitest';
import { fact } from '../hearing.ts';

const range = (span: string) => {
  const found = fact(`I brushed on poly ${span} ago and it is hazy`, 'hours-since-coat');
  return found?.range?.map(Number);
};

describe('so long ago', () => {
  it.each<[string, number, number]>([
    ['an hour', 1, 1],
    ['one hour', 1, 1],
    ['2 hours', 2, 2],
    ['two hours', 2, 2],
    ['3 hrs', 3, 3],
    ['12 hours', 12, 12],
    ['30 minutes', 0.5, 0.5],
    ['45 min', 0.75, 0.75],
    ['a day', 24, 24],
    ['2 days', 48, 48],
    ['ten days', 240, 240],
    ['a week', 168, 168],
    ['two weeks', 336, 336],
    ['3 to 4 hours', 3, 4],
    ['2-3 days', 48, 72],
    ['two or three days', 48, 72],
    ['24 hours', 24, 24],
    ['forty five minutes', 0.75, 0.75],
    ['twenty four hours', 24, 24],
    ['a day and a half', 36, 36],
    ['1.5 hours', 1.5, 1.5],
    ['1,5 hours', 1.5, 1.5],
    ['1.5 days', 36, 36],
    ['2.5 to 3 hours', 2.5, 3],
    ['2 full days', 48, 48],
    ['3 whole weeks', 504, 504],
    ['two more days', 48, 48],
  ])('%s', (span, low, high) => {
    const got = range(span);
    expect(got?.[0]).toBeCloseTo(low * 0.8, 1);
    expect(got?.[1]).toBeCloseTo(high * 1.3, 1);
  });

  it('months and years are cut to what a fact may hold', () => {
    expect(range('2 months')?.[0]).toBeGreaterThan(1000);
    expect(range('20 years')?.[1]).toBe(9000);
  });

  it('vague words are wide', () => {
    for (const span of ['a few hours', 'several days', 'a couple of weeks']) {
      const [low = 0, high = 0] = range(span) ?? [];
      expect(high / low, span).toBeGreaterThan(1.6);
    }
    const [low = 0, high = 0] = range('a few days') ?? [];
    expect(low).toBeLessThanOrEqual(48);
    expect(high).toBeGreaterThan(96);
  });
});

describe('the second day, day three', () => {
  // Counted from the day of the coat, half a day early at the least.
  const day = (text: string) => fact(text, 'hours-since-coat')?.range?.map(Number);
  it.each<[string, number, number]>([
    ['I brushed on poly. On the second day it is hazy', 36, 48],
    ['I brushed on poly. By the third day it was hazy', 60, 72],
    ['I brushed on poly. Day three and it is hazy', 60, 72],
    ['I brushed on poly. Its day 4 and it is hazy', 84, 96],
    ['I brushed on poly. Week 2 and it is hazy', 252, 336],
  ])('%s', (text, low, high) => {
    const got = day(text);
    expect(got?.[0]).toBeCloseTo(low * 0.8, 1);
    expect(got?.[1]).toBeCloseTo(high * 1.3, 1);
  });
  it.each(['I brushed on poly. Day one it was hazy', 'I brush poly the second way'])('%s: none', (text) => {
    expect(day(text)).toBeUndefined();
  });
});
