/**
 * The words of a text, with their sentences, clauses and parts.
 */
import { describe, expect, it } from 'vitest';
import { wordsIn } from '#engine/hear/words/words.ts';
import { ear } from '../small-ear.ts';

describe('the words of a text', () => {
  const split = (text: string) => wordsIn(text, { ...ear, spelled: (word) => word });
  it('are told by sentence, clause and part', () => {
    const of = (text: string, name: 'sentence' | 'clause' | 'part') => split(text).map((word) => word[name]);
    expect(of('a b. c', 'sentence')).toEqual([0, 0, 1]);
    expect(of('a! b? c\nd', 'sentence')).toEqual([0, 1, 2, 3]);
    expect(of('a, b; c (d) e: f', 'sentence')).toEqual([0, 0, 0, 0, 0, 0]);
    expect(of('a, b', 'clause')).toEqual([0, 0]);
    expect(of('a but b', 'clause')).toEqual([0, 1, 1]);
    for (const mark of ['; ', ': ', ' (', ') ', ' – ', ' — ', ' - '])
      expect(of(`a${mark}b`, 'clause')).toEqual([0, 1]);
    expect(of('a-b', 'clause')).toEqual([0, 0]);
    expect(of('a, b', 'part')).toEqual([0, 1]);
    expect(of('a but b; c. d', 'part')).toEqual([0, 1, 1, 2, 3]);
    expect(of('twenty or so b', 'clause')).toEqual([0, 0, 0, 0]);
    expect(of('twenty so b', 'clause')).toEqual([0, 1, 1]);
    expect(split('a, b').map(({ comma }) => comma)).toEqual([false, true]);
  });
  it('ask where their sentence ends in a question mark, and that sentence alone', () => {
    expect(split('a b? c. d?').map(({ asks }) => asks)).toEqual([true, true, false, true]);
    expect(split('a. b?').map(({ asks }) => asks)).toEqual([false, true]);
  });
  it('ask without the mark, too, where the sentence begins as a question does', () => {
    expect(split('is it dry. it is').map(({ asks }) => asks)).toEqual([true, true, true, false, false]);
    expect(split('does the wax smear').every(({ asks }) => asks)).toBe(true);
    expect(split('it is dry, is it').some(({ asks }) => asks)).toBe(false);
    expect(split('is. it').some(({ asks }) => asks)).toBe(false);
  });
  it('are plain: without accents and apostrophes, numbers whole, halves as such', () => {
    expect(split('Don’t café 2.5 1,5 1st ½ 1/2 x2').map(({ word }) => word)).toEqual([
      'dont',
      'cafe',
      '2.5',
      '1,5',
      '1st',
      'half',
      'half',
      'x',
      '2',
    ]);
    const [first] = split('  Don’t');
    expect(first).toMatchObject({ from: 2, to: 7 });
    expect(split('50 % off').map(({ word }) => word)).toEqual(['50', 'off']);
  });
  it('beyond the first 6,000 letters are not read', () => {
    expect(
      split(`${'a '.repeat(2999)}b c`)
        .map(({ word }) => word)
        .slice(-1),
    ).toEqual(['b']);
  });
});
