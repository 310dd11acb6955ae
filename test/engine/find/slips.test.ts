import { describe, expect, it } from 'vitest';
import { slips } from '#engine/find/slips.ts';
import { fc } from './word-arbitrary.ts';

describe('slips', () => {
  it('are none between a word and itself', () => {
    fc.assert(fc.property(fc.word(), (word) => slips(word, word) === 0));
  });

  it('are at most one a letter left out, and at most the longer word with a dear first letter', () => {
    fc.assert(
      fc.property(fc.word(), fc.word(), (a, b) => {
        const made = slips(a, b);
        return made >= 0 && made <= Math.max(a.length, b.length) + 0.5;
      }),
    );
  });

  it.each([
    ['a doubled letter before a wrong vowel', 'finnish', 'finish', 'finesh', 'finish'],
    ['a wrong vowel before a wrong consonant', 'seperate', 'separate', 'sebarate', 'separate'],
    ['swapped neighbors before two wrong letters', 'stikcy', 'sticky', 'stimty', 'sticky'],
    ['a wrong letter inside before a wrong first letter', 'stirky', 'sticky', 'kticky', 'sticky'],
  ])('count %s', (_, lesser, meant, greater, same) => {
    expect(meant).toBe(same);
    expect(slips(lesser, meant)).toBeLessThan(slips(greater, same));
  });
});
