/**
 * Hours that a label gives, and those told beside them. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { besideLabel, labelTime } from '#engine/hear/times/label-time.ts';
import { counting as ear, read } from '../small-ear.ts';

describe('what the label gives', () => {
  const label = (text: string) => labelTime(ear, read(text).words);
  it.each<[string, number]>([
    ['the can says 2 hours', 2],
    ['dry time on the can 8 hours', 8],
    ['the tin promised four hours', 4],
    ['8 to 12 hours dry the label says', 12],
    ['supposed to dry in two hours', 2],
    ['should be hard in two days', 48],
    ['can says 2 hours, or the label says four hours', 4],
    ['can says four hours, or the label says 2 hours', 4],
  ])('%s', (text, hours) => {
    expect(label(text)?.hours).toBe(hours);
  });
  it.each([
    'it took 2 hours',
    'the can of 2 hours',
    'he says 2 hours',
    'can says so, 2 hours',
    'supposed to be here in two hours',
    'it dries in two hours',
    'the can says two weeks',
    'the can says it is 2 hours old',
  ])('%s: none', (text) => {
    expect(label(text)).toBeUndefined();
  });
  const beside = (text: string) => {
    const { words } = read(text);
    const found = labelTime(ear, words);
    return found && besideLabel(ear, words, found)?.hours;
  };
  it.each<[string, number | undefined]>([
    ['can says 2 hours. It has been twice that', 4],
    ['can says 2 hours. Been triple the time', 6],
    ['can says 2 hours. It has been half that', 1],
    ['can says 2 hours. It has been five times that', 10],
    ['can says 2 hours. It has been 3 times what it says', 6],
    ['can says 2 hours. Its 6 and still soft', 6],
    ['can says 2 hours. Been eight', 8],
    ['can says 2 days. Its 6 now', 144],
    ['can says 2 hours. Its 6 doors', undefined],
    ['can says 2 hours. Its a mess', undefined],
    ['can says 2 hours. Its 6 hours', undefined],
    ['can says 2 hours. Saw 6', undefined],
    ['can says 2 hours. Saw it twice', undefined],
    ['its 6 and the can says 2 hours', undefined],
  ])('%s: %s', (text, hours) => {
    expect(beside(text)).toBe(hours);
  });
});
