/**
 * Counts of coats, word by word, in pairs of sentences of our own. How people count is common practice, no source.
 */
import { describe, expect, it } from 'vitest';
import {
  countBefore,
  countDone,
  countOf,
  countOn,
  countSoFar,
  isApplication,
  timesLaid,
} from '#engine/hear/coats/coat-counts.ts';
import type { Word } from '#engine/hear/words/words.ts';
import { marked } from '../marked.ts';
import { counting as ear } from '../small-ear.ts';

const at =
  <T>(is: (words: readonly Word[], from: number) => T) =>
  (text: string): T => {
    const { words, from } = marked(text);
    return is(words, from);
  };

const numbers = (count: { low: number; high: number } | undefined) =>
  count && (count.low === count.high ? count.low : [count.low, count.high]);

describe('a round that is a coat', () => {
  const is = at(isApplication);
  it.each([
    'four [applications] of oil',
    '[rounds] of shellac',
    'the third [round] of satin',
    '[passes] of thin lacquer',
    '[applications]',
    '3 [rounds]',
    'two [passes]',
    'several [rounds]',
    'third [round]',
    '4th [pass]',
    '[round] 3',
    '[round] two',
    'few [passes], then sanding',
  ])('%s', (text) => {
    expect(is(text)).toBe(true);
  });
  it.each([
    '[rounds] of the room',
    '[round] of beer and wine',
    'the [rounds]',
    'seven [rounds]',
    'two, [rounds]',
    'my [round]',
    'third [rounds]',
    '[round] table',
    '[round], 3',
    'two [passes] with the sander',
    'two [passes] on the first',
    'third [round] of sanding',
    '[pass] 3',
    '[coat]',
    'two [goes]',
  ])('%s: none', (text) => {
    expect(is(text)).toBe(false);
  });
});

describe('a count before coats', () => {
  const before = (text: string) => numbers(at((words, from) => countBefore(ear, words, from))(text));
  it.each<[string, number | readonly [number, number]]>([
    ['three [coats]', 3],
    ['three thin [coats]', 3],
    ['three very thin wet [coats]', 3],
    ['both [coats]', 2],
    ['the second [coat]', 2],
    ['the second of three [coats]', 2],
    ['2nd [coat]', 2],
    ['9 or 10 [coats]', [9, 10]],
    ['two to three [coats]', [2, 3]],
    ['three or two [coats]', 2],
    ['half a dozen [coats]', 6],
    ['a dozen [coats]', 12],
    ['4 double [coats]', 4],
    ['several [coats]', [3, 7]],
    ['few [coats]', [2, 5]],
    ['multiple [coats]', [2, 6]],
    ['many [coats]', [4, 10]],
    ['two and more [coats]', 2],
  ])('%s', (text, wanted) => {
    expect(before(text)).toEqual(wanted);
  });
  it.each([
    '[coats]',
    'a [coat]',
    'each [coat]',
    'another [coat]',
    'three. [Coats]',
    'three but [coats]',
    'two more [coats]',
    'three last [coats]',
    'one final [coat]',
    '2 k [coat]',
    'three hours [coats]',
    'how many [coats]',
    'too many [coats]',
    'so many [coats]',
    'three of the good old thin [coats]',
    'double [coat]',
  ])('%s: none', (text) => {
    expect(before(text)).toBeUndefined();
  });
});

describe('a count of coats that are not named', () => {
  it('"three of clear", "poly x2"', () => {
    const of = at((words, from) => countOf(ear, words, from));
    for (const [text, count] of [
      ['[three] of clear', 3],
      ['[one] of poly', 1],
      ['[two] of satin', 2],
      ['[12] of oil', 12],
      ['[two] of white paint', 2],
      ['poly [x] 2', 2],
      ['satin, poly [x] 3', 3],
    ] as const)
      expect(numbers(of(text)), text).toBe(count);
    expect(of('[two] of paint')?.ofPaint).toBe(true);
    expect(of('[two] of clear')?.ofPaint).toBe(false);
    for (const text of [
      '[three] of them',
      '[13] of clear',
      '[1.5] of clear',
      '[third] of clear',
      '[a] of clear',
      '[three] clear',
      '[three] of, clear',
      '[three] of the good old clear',
      'grit [x] 2',
      'poly [x] it',
      'poly, [x] 2',
      '[many] of clear',
    ])
      expect(of(text), text).toBeUndefined();
  });
  it('"three so far", "nine in all"', () => {
    const of = at((words, from) => countSoFar(ear, words, from));
    for (const [text, count] of [
      ['brushed on [three] so far', 3],
      ['[nine] in all', 9],
      ['[two] in total', 2],
      ['[four] all told', 4],
    ] as const)
      expect(numbers(of(text)), text).toBe(count);
    for (const text of [
      'saw [three] so far',
      'brushed it, [three] so far',
      '[three] so good',
      '[nine] in June',
      '[third] in all',
      '[a] in all',
      '[21] in all',
      '[three] far so',
      '[three]',
    ])
      expect(of(text), text).toBeUndefined();
  });
  it('"two on", "and four on the top"', () => {
    const of = at((words, from) => countOn(ear, words, from));
    for (const [text, count] of [
      ['[two] on', 2],
      ['[two] down', 2],
      ['[two] done', 2],
      ['[two] on now', 2],
      ['[two] on already', 2],
      ['and [four] on the top', 4],
      ['[two] on, it is dull', 2],
    ] as const)
      expect(numbers(of(text)), text).toBe(count);
    for (const text of [
      '[two] on the top',
      'and [four] down the hall',
      '[two], on',
      '[two] of it',
      '[third] on',
      '[a] on',
      '[it] on',
    ])
      expect(of(text), text).toBeUndefined();
  });
  it('"Six down", "I did two", "gave it three", "mine has 4"', () => {
    const of = at((words, from) => countDone(ear, words, from));
    for (const [text, count] of [
      ['[six] down', 6],
      ['[six] done and dull', 6],
      ['[six] on', 6],
      ['[six] on now', 6],
      ['I did [two]', 2],
      ['I did [two] thin', 2],
      ['I count [three]', 3],
      ['gave it [three]', 3],
      ['gave mine [three] wipes', 3],
      ['put on [three]', 3],
      ['laid on [three] thin', 3],
      ['mine has [4]', 4],
      ['it has [4]', 4],
    ] as const)
      expect(numbers(of(text)), text).toBe(count);
    expect(numbers(of('I brushed [three] ones'))).toBe(3);
    for (const text of [
      '[six] feet',
      '[six], down',
      '[six] on the hall',
      'I saw [two]',
      'I did [two] doors',
      'I did [one]',
      'I did [a]',
      'I did [third]',
      'I did [21]',
      'I did [2.5]',
      'I, [two]',
      'gave him [three]',
      'put it [three]',
      'put on [three] doors',
      'mine has [4] legs',
      'he has [4]',
      'I have [4]',
      'it used [4]',
    ])
      expect(of(text), text).toBeUndefined();
  });
  it('"oiled it twice", "brushed it a second time"', () => {
    const of = at((words, from) => timesLaid(ear, words, from));
    for (const [text, count] of [
      ['oiled it [twice]', 2],
      ['rubbed in oil [four] times', 4],
      ['brushed it a [third] time', 3],
      ['waxed it [3] times', 3],
    ] as const)
      expect(numbers(of(text)), text).toBe(count);
    for (const text of [
      'saw it [twice]',
      'oiled it, [twice]',
      'oiled it and went out for all of that day [twice]',
      'oiled it [four] doors',
      'saw it a [third] time',
      'brushed it the [third] time',
      'brushed it a [first] time',
      'brushed it a [third] coat',
      'oiled it [many] times',
    ])
      expect(of(text), text).toBeUndefined();
  });
});
