/**
 * Rules that words call for, on a small invented lexicon. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { dangersOf, urgentOf } from '#engine/hear/signs/dangers.ts';
import { mannerIn } from '../small-ear.ts';

describe('dangers', () => {
  const rules = (text: string) => {
    const { words, matches, manner } = mannerIn(text);
    return dangersOf(words, matches, manner).map(({ rule }) => rule);
  };
  it('are called for by words that are asked or planned as well, and by none that are denied', () => {
    expect(rules('oily rag')).toEqual(['rags']);
    expect(rules('can I leave the rag?')).toEqual(['rags']);
    expect(rules('afraid of the rag')).toEqual(['rags']);
    expect(rules('no rag')).toEqual([]);
    expect(rules('rag and another rag')).toEqual(['rags']);
  });
  it('of two over the same words the one that names more of them is meant', () => {
    expect(rules('gas water heater')).toEqual(['flame']);
    expect(rules('gas heater')).toEqual(['heater']);
    expect(rules('gas water heater, gas heater').sort()).toEqual(['flame', 'heater']);
  });
  it('rest on all their words', () => {
    const { words, matches, manner } = mannerIn('a rag, one more rag');
    expect(dangersOf(words, matches, manner)[0]?.rests.length).toBeGreaterThanOrEqual(2);
  });
  it('that cannot wait are told case by case, the longer phrase before the one within it', () => {
    const urgent = (text: string) => {
      const { words, matches, manner } = mannerIn(text);
      return urgentOf(words, matches, manner).map(({ rule, at }) => `${rule} ${at}`);
    };
    expect(urgent('rag smokes')).toEqual(['rags 0']);
    expect(urgent('rag pile smokes')).toEqual(['rags 1']);
    expect(urgent('rag smokes; the pile smokes')).toEqual(['rags 0', 'rags 1']);
    expect(urgent('the dog licked it')).toEqual(['licked 0']);
    expect(urgent('he licked it')).toEqual(['licked 1']);
    expect(urgent('no rag smokes')).toEqual([]);
  });
  it('are taken back by what makes them none in the same sentence, and the rule with them', () => {
    const heard = (text: string) => {
      const { words, matches, manner } = mannerIn(text);
      return [...rules(text), ...urgentOf(words, matches, manner).map(({ rule, at }) => `${rule} ${at}`)];
    };
    expect(heard('the rag pile smokes in water')).toEqual([]);
    expect(heard('the rag is in water')).toEqual([]);
    expect(heard('the rag is in a jar. It is in water.')).toEqual(['rags']);
    expect(heard('the rag pile smokes not in water')).toEqual(['rags', 'rags 1']);
    // Another case of the rule stands.
    expect(heard('the rag smokes in water')).toEqual(['rags', 'rags 0']);
  });
});
