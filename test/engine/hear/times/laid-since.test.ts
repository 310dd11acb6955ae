/**
 * What was laid in the story of a post, by the small lexicon. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { isTold, laidIn } from '#engine/hear/times/laid-since.ts';
import { mannerIn } from '../small-ear.ts';

describe('what was laid in the story', () => {
  const laid = (text: string) => {
    const { words, manner } = mannerIn(text);
    return laidIn(words, manner).map((at) => words[at]?.word);
  };
  it.each<[string, readonly string[]]>([
    ['began the second coat', ['coat']],
    ['a second coat', ['coat']],
    ['another coat', ['coat']],
    ['the second coat is tacky', []],
    ['brushed the second coat', ['brushed', 'coat']],
    ['my next coat', []],
    ['a coat', []],
    ['then wax it', ['then']],
    ['then I slept', []],
    ['then, wax', ['then']],
    ['the poly went on', ['went']],
    ['the second went on', ['went']],
    ['it went on', []],
    ['the poly went off', []],
    ['had to apply more', ['apply']],
    ['they apply more', []],
    ['I sprayed it', ['sprayed']],
    ['my sprayed table', []],
    ['it was sprayed', []],
    ['I buffed it', []],
    ['I put wax on', ['put']],
    ['I put it on', []],
    ['when I sprayed it', []],
    ['before it sprayed', []],
    ['since he sprayed it', []],
    ['can i have sprayed it', []],
    ['I sprayed it?', []],
    ['never sprayed it', []],
    ['afraid he sprayed it', []],
  ])('%s: %o', (text, wanted) => {
    expect(laid(text)).toEqual(wanted);
  });
  it('is told where nobody asks, plans, fears or denies it', () => {
    const told = (text: string, word: string) => {
      const { words, manner } = mannerIn(text);
      return isTold(
        words,
        manner,
        words.findIndex((one) => one.word === word),
      );
    };
    expect(told('I saw dots', 'dots')).toBe(true);
    for (const text of ['want to see dots', 'no dots', 'afraid of dots', 'I see dots?'])
      expect(told(text, 'dots'), text).toBe(false);
    expect(told('I saw dots', 'gone')).toBe(false);
  });
});
