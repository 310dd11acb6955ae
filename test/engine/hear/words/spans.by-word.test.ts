/**
 * Numbers and spans of time, worked by hand.
 */
import { describe, expect, it } from 'vitest';
import { countAt, numberAt, ordinalSpan, spanAt } from '#engine/hear/words/spans.ts';
import { ear, read } from '../small-ear.ts';

describe('numbers and spans of time', () => {
  const count = (text: string, at = 0) => countAt(ear, read(text).words, at);
  it('are figures or words, with their halves', () => {
    for (const [text, value, to] of [
      ['3 x', 3, 1],
      ['2.5', 2.5, 1],
      ['2,5', 2.5, 1],
      ['three', 3, 1],
      ['forty five', 45, 2],
      ['twenty one', 21, 2],
      ['two and a half', 2.5, 4],
      ['3 1/2', 3.5, 2],
      ['a', 1, 1],
      ['three quarters of an hour', 0.75, 4],
      ['a quarter of an hour', 0.25, 4],
      ['forty, five', 40, 1],
      ['forty forty', 40, 1],
      ['five five', 5, 1],
    ] as const)
      expect(count(text), text).toEqual({ to, value });
    for (const text of ['third', 'second', 'first', '3rd', 'many', 'quarters of an hour', ''])
      expect(count(text), text).toBeUndefined();
    expect(numberAt(ear, undefined)).toBeUndefined();
    expect(numberAt(ear, read('2nd').words[0])).toBeUndefined();
  });
  const span = (text: string, at = 0) => {
    const found = spanAt(ear, read(text).words, at);
    return found && [found.low, found.high, found.to];
  };
  it('from one to another, with a smaller unit behind, with fillers between', () => {
    for (const [text, low, high, to] of [
      ['two days', 48, 48, 2],
      ['two or three days', 48, 72, 4],
      ['two to three days', 48, 72, 4],
      ['2 3 days', 48, 72, 3],
      ['three or two days', undefined, undefined, 0],
      ['two full days', 48, 48, 3],
      ['two more full days', 48, 48, 4],
      ['an hour and a half', 1.5, 1.5, 5],
      ['an hour and a quarter', 1.25, 1.25, 5],
      ['2 hours 20 minutes', 2 + 1 / 3, 2 + 1 / 3, 4],
      ['two weeks and three days', 408, 408, 5],
      ['two days and three weeks', 48, 48, 2],
      ['2 hours, 20 minutes', 2, 2, 2],
      ['2 hours 90 minutes', 2, 2, 2],
      ['2 h', 2, 2, 2],
      ['two h', undefined, undefined, 0],
      ['a second', undefined, undefined, 0],
      ['two long good full days', undefined, undefined, 0],
      ['two. Days', undefined, undefined, 0],
    ] as const)
      expect(span(text), text).toEqual(low === undefined ? undefined : [low, high, to]);
  });
  const nth = (text: string, at: number) => {
    const found = ordinalSpan(ear, read(text).words, at);
    return found && [found.low, found.high, found.to];
  };
  it('the third day is from two and a half days to three', () => {
    expect(nth('on the third day', 2)).toEqual([60, 72, 4]);
    expect(nth('third day', 0)).toEqual([60, 72, 2]);
    expect(nth('my third day', 1)).toEqual([60, 72, 3]);
    expect(nth('like the third day', 2)).toBeUndefined();
    expect(nth('on a third day', 2)).toBeUndefined();
    expect(nth('first day', 0)).toBeUndefined();
    expect(nth('third, day', 0)).toBeUndefined();
    expect(nth('third coat', 0)).toBeUndefined();
    expect(nth('day three', 0)).toEqual([60, 72, 2]);
    expect(nth('hour twenty two', 0)).toEqual([21.5, 22, 3]);
    expect(nth('on day 3', 1)).toEqual([60, 72, 3]);
    expect(nth('one day three', 1)).toBeUndefined();
    expect(nth('day a', 0)).toBeUndefined();
    expect(nth('day 3 hours', 0)).toBeUndefined();
    expect(nth('day 3, hours', 0)).toEqual([60, 72, 2]);
    expect(nth('day 61', 0)).toBeUndefined();
    expect(nth('day 60', 0)).toEqual([1428, 1440, 2]);
    expect(nth('hour 101', 0)).toBeUndefined();
    expect(nth('week 31', 0)).toBeUndefined();
  });
});
