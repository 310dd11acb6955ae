/**
 * Answers that a text gives unasked, on a small invented lexicon: how sure, and which of two. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { signsOf } from '#engine/hear/signs/signs.ts';
import { ear, mannerIn } from '../small-ear.ts';

describe('signs', () => {
  const signs = (text: string) => {
    const { words, matches, manner } = mannerIn(text);
    return Object.fromEntries(
      signsOf(ear, words, matches, manner).map(({ question, answer, sure }) => [
        question,
        [answer, sure] as const,
      ]),
    );
  };
  const sure = (text: string, question = 'round') => signs(text)[question]?.[1] ?? 0;
  it('answer yes or no; denied they answer the other way', () => {
    expect(signs('bubbles')['round']?.[0]).toBe('yes');
    expect(signs('no bubbles')['round']?.[0]).toBe('no');
    expect(signs('smooth')['round']?.[0]).toBe('no');
    expect(signs('not smooth')['round']?.[0]).toBe('yes');
  });
  it('are the surer the more words tell, and the more often; denied or past they are less sure', () => {
    expect(sure('nail dents', 'soft')).toBeGreaterThan(sure('soft', 'soft'));
    expect(sure('very soft edges', 'soft')).toBeGreaterThan(sure('nail dents', 'soft'));
    expect(sure('bubbles. Bubbles')).toBeGreaterThan(sure('bubbles'));
    expect(sure('no bubbles')).toBeLessThan(sure('bubbles'));
    expect(sure('bubbles that went away')).toBeLessThan(sure('no bubbles'));
    expect(sure('bubbles. '.repeat(30))).toBeLessThanOrEqual(0.95);
  });
  it('of both kinds: the stronger is heard, and the other takes from it', () => {
    expect(signs('round dots, smooth')['round']?.[0]).toBe('yes');
    expect(sure('round dots, smooth')).toBeLessThan(sure('round dots'));
    expect(signs('smooth, bubbles')['round']?.[0]).toBe('yes');
    expect(signs('no bubbles, smooth. Round dots')['round']?.[0]).toBe('yes');
  });
  it('of what was planned tell nothing of work, but of what is seen', () => {
    expect(signs('I want to see bubbles')['round']?.[0]).toBe('yes');
    expect(signs('I want to see it laid thick')['laid']).toBeUndefined();
    expect(signs('it was laid thick')['laid']?.[0]).toBe('yes');
    expect(signs('afraid of bubbles')).toEqual({});
  });
  it('lie in no words that are none', () => {
    expect(signs('bubble wrap')).toEqual({});
    expect(signs('bubble and wrap')['round']?.[0]).toBe('yes');
    expect(signs('bubble wrap, bubbles')['round']?.[0]).toBe('yes');
  });
});
