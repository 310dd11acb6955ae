/**
 * How phrases are found, on a small invented lexicon: what may stand between two words of one. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { read } from '../small-ear.ts';

const found = (text: string) => read(text).matches.map(({ sense, from, to }) => `${sense} ${from}-${to}`);

const has = (text: string, sense: string) => read(text).matches.some((one) => one.sense === sense);

describe('a phrase', () => {
  it('is found in other forms of its words, and a word that must stand so only as it is', () => {
    expect(has('bubble', 'sign round yes')).toBe(true);
    expect(found('lacquer')).toEqual(['fact family lacquer 0-1']);
  });
  it('bears two words between its own, and no third', () => {
    expect(has('round dots', 'sign round yes')).toBe(true);
    expect(has('round gray dots', 'sign round yes')).toBe(true);
    expect(has('round small gray dots', 'sign round yes')).toBe(true);
    expect(has('round very small gray dots', 'sign round yes')).toBe(false);
  });
  it('ends with its clause, at a comma, and at a denial', () => {
    for (const text of ['round; dots', 'round. Dots', 'round but dots', 'round no dots', 'round, gray dots'])
      expect(has(text, 'sign round yes'), text).toBe(false);
    expect(has('round, dots', 'sign round yes')).toBe(true);
    expect(has('round not dots', 'sign round yes')).toBe(false);
  });
  it('of a fact reaches over no word that ties two things, nor over a comma', () => {
    expect(has('tung seed oil', 'fact family oil')).toBe(true);
    const tung = (text: string) =>
      read(text).matches.some(({ sense, size }) => sense === 'fact family oil' && size === 2);
    expect(tung('tung oil')).toBe(true);
    expect(tung('tung nut oil')).toBe(true);
    for (const tie of [
      'and',
      'or',
      'is',
      'was',
      'with',
      'under',
      'over',
      'of',
      'in',
      'from',
      'after',
      'before',
      'than',
    ])
      expect(tung(`tung ${tie} oil`), tie).toBe(false);
    expect(tung('tung, oil')).toBe(false);
    expect(
      read('round and dots').matches.some(({ sense, size }) => sense === 'sign round yes' && size === 2),
    ).toBe(true);
  });
  it('is read as it is meant to be spelled', () => {
    expect(has('laquer', 'fact family lacquer')).toBe(true);
    for (const slip of ['lacqer', 'lacquerr', 'shelac', 'shellack'])
      expect(
        read(slip).matches.some(({ sense }) => sense.startsWith('fact family')),
        slip,
      ).toBe(true);
    for (const other of ['liquor', 'shell', 'lacq', 'xacquer']) expect(found(other), other).toEqual([]);
  });
});
