/**
 * What was laid after what, word by word, in pairs of sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { isBegunAnew, isStill, laidAfter, laidNext } from '#engine/hear/coats/coat-story.ts';
import type { Manner } from '#engine/hear/words/manner.ts';
import { marked } from '../marked.ts';

const plain: Manner = {
  denied: () => undefined,
  notYet: () => false,
  feared: () => false,
  over: () => false,
};

describe('the next coat of the story', () => {
  const anew = (text: string) => {
    const { words, from } = marked(text);
    return isBegunAnew(words, from);
  };
  it.each([
    'I [stripped] it, two coats of oil',
    'he [redid] it and brushed it',
    'back to [bare] wood, two coats',
    'sanded it [off], two coats',
    'took everything [off] and waxed it',
    'started [over], two coats',
  ])('all before was taken off: %s', (text) => {
    expect(anew(text)).toBe(true);
  });
  it.each([
    'I [stripped] it',
    'two coats, then [stripped]',
    'on [bare] wood, two coats',
    'wiped [off], two coats',
    'dust came [off], two coats',
    'went [over], two coats',
    'I [sanded] it, two coats',
  ])('and not: %s', (text) => {
    expect(anew(text)).toBe(false);
  });

  const after = (text: string, manner = plain) => {
    const { words, to } = marked(text);
    const found = laidAfter(words, manner, words[to]?.from ?? 1e6);
    return found && words.find(({ from }) => from === found.from)?.word;
  };
  it('is told by a word of laying in a new clause, by "then", or by what goes on top', () => {
    expect(after('it was [two days], so brushed again')).toBe('brushed');
    expect(after('[two days] ago. Sprayed it')).toBe('sprayed');
    expect(after('[two days], then two coats of clear')).toBe('then');
    expect(after('[two days] then the poly went on')).toBe('then');
    expect(after('[two days], wax on top')).toBe('wax');
    expect(after('[two days], poly on')).toBe('poly');
    expect(after('[two days] a second coat')).toBe('a');
    expect(after('[two days]. I stripped it. Two coats')).toBe('stripped');
  });
  it('is none where nothing new is told', () => {
    for (const text of [
      '[two days] ago',
      '[two days] then I slept',
      '[two days], wax on it',
      '[two days], dust on top',
      'it was [two days] of brushed wood',
      '[two days] a second look',
      '[two days] it was a good coat',
      '[two days]. It is dull',
    ])
      expect(after(text)).toBeUndefined();
    expect(after('[two days]. Sprayed it', { ...plain, notYet: () => true })).toBeUndefined();
  });

  const next = (text: string) => {
    const { words, to } = marked(text);
    return laidNext(words, words[to]?.from ?? 1e6);
  };
  it.each([
    'waited [two days] and brushed it',
    '[two days] then I sprayed',
    '[two days] and put on a coat',
    'after [two days] then we laid it',
  ])('was laid in the clause of the time: %s', (text) => {
    expect(next(text)).toBe(true);
  });
  it.each([
    'waited [two days] and put it away',
    '[two days] it was brushed',
    '[two days]. And brushed it',
    'brushed it and waited [two days]',
    '[two days] and looked',
  ])('and not: %s', (text) => {
    expect(next(text)).toBe(false);
  });

  const still = (text: string) => {
    const { words, from, to } = marked(text);
    return isStill(words, words[from]?.from ?? 0, words[to - 1]?.to ?? 0);
  };
  it('what is still so is told of now', () => {
    for (const text of [
      '[five days] and still tacky',
      'still [five days] on',
      'it is now [five days]',
      '[five days] it has now',
    ])
      expect(still(text)).toBe(true);
    for (const text of [
      '[five days] and tacky',
      'it is so and still, because [five days]',
      '[five days]. Still tacky',
      '[five days] of this and that and they are still here',
    ])
      expect(still(text)).toBe(false);
  });
});
