/**
 * What stands around a time, word by word, in pairs of sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import {
  isAfterTop,
  isAlone,
  isDrying,
  isOfDrying,
  isOfLaying,
  laysBeside,
  namesFilm,
} from '#engine/hear/times/time-words.ts';
import { marked } from '../marked.ts';

describe('what stands around a time', () => {
  const at =
    <T>(is: (words: ReturnType<typeof marked>['words'], from: number, to: number) => T) =>
    (text: string) => {
      const { words, from, to } = marked(text);
      return is(words, from, to);
    };
  it('alone', () => {
    const alone = at(isAlone);
    for (const text of [
      '[five days]',
      'its been [two weeks] now',
      'only [five days], it dents',
      'so far [two days]',
      'waiting [two days] total',
    ])
      expect(alone(text)).toBe(true);
    for (const text of [
      '[five days] of sun',
      'saw it [five days]',
      '[five days] dull',
      'table, [five days] there, dull',
    ])
      expect(alone(text)).toBe(false);
  });
  it('a film, named in the same sentence', () => {
    const film = at(namesFilm);
    for (const text of ['the poly is [two days] old', '[two days] on the varnish', 'lacquer, [a day]'])
      expect(film(text)).toBe(true);
    for (const text of [
      'the poly. It is [two days] old',
      'poly that I got for my own old big desk is [two days] old',
      'the table is [two days] old',
    ])
      expect(film(text)).toBe(false);
  });
  it('drying', () => {
    expect(at(isDrying)('it has been drying [two days]')).toBe(true);
    expect(at(isDrying)('curing for [two days]')).toBe(true);
    expect(at(isDrying)('drying, [two days]')).toBe(false);
    expect(at(isDrying)('drying in all that sun [two days]')).toBe(false);
    for (const text of [
      'dried [two days]',
      'waited [two days]',
      '[two days] to cure',
      '[two days] it was drying',
    ])
      expect(at(isOfDrying)(text)).toBe(true);
    for (const text of ['dried, [two days]', '[two days], dry', 'it dried out there by itself [two days]'])
      expect(at(isOfDrying)(text)).toBe(false);
  });
  it('the coat that it comes after', () => {
    const top = at((words, _, to) => isAfterTop(words, to));
    for (const text of [
      '[two days] after the wax it got rough',
      '[two days] after my last poly',
      '[two days] since lacquer',
    ])
      expect(top(text)).toBe(true);
    for (const text of [
      '[two days] after the oil I brushed on poly',
      '[two days] after lunch',
      '[two days] after it, the wax',
      '[two days] after that one last wax',
    ])
      expect(top(text)).toBe(false);
  });
  it('laying, in its clause or between its commas', () => {
    expect(at(isOfLaying)('I brushed it [two days] ago')).toBe(true);
    expect(at(isOfLaying)('I brushed it, [two days] ago')).toBe(true);
    expect(at(isOfLaying)('I brushed it. [Two days] ago')).toBe(false);
    expect(at(isOfLaying)('the brush, [two days] ago')).toBe(false);
    for (const text of ['the coat [two days] ago', 'I sprayed [two days] ago', '[two days] ago a layer'])
      expect(at(laysBeside)(text)).toBe(true);
    for (const text of [
      'the coat, [two days] ago',
      'bubbles in my coat [two days] ago',
      'dust on the coat [two days] ago',
      'saw it [two days] ago',
    ])
      expect(at(laysBeside)(text)).toBe(false);
  });
});
