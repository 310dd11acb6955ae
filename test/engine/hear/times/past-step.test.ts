/**
 * Steps that are over, and sprayings. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { isPastStep, isSprayedAlready } from '#engine/hear/times/past-step.ts';
import type { Match } from '#engine/hear/words/match.ts';
import { mannerIn } from '../small-ear.ts';

const matchAt = (from: number, to: number, kind: string, of: readonly string[] = []): Match => ({
  sense: `${kind} ${of.join(' ')}`,
  kind,
  of,
  from,
  to,
  size: to - from,
});

describe('a step that is over', () => {
  const past = (text: string, word: string) => {
    const { words, manner } = mannerIn(text);
    const at = words.findIndex((one) => one.word === word);
    return isPastStep(words, manner, matchAt(at, at + 1, 'danger', ['rags']));
  };
  it.each([
    'I washed it with ammonia',
    'cleaned it, ammonia',
    'he put ammonia on it',
    'I sprayed ammonia',
    'scrubbed with ammonia and it is dull',
  ])('%s', (text) => {
    expect(past(text, 'ammonia')).toBe(true);
  });
  it.each([
    'ammonia on it',
    'washed it. Ammonia is here',
    'washed it but ammonia is here',
    'I want to see it washed with ammonia',
    'washed it with ammonia?',
    'never washed it with ammonia',
    'washed it with ammonia, now use more',
    'washed it with ammonia, cleaning again',
    'washed it with ammonia, next I put some on',
    'can i have it washed with ammonia',
  ])('%s: it may be ahead', (text) => {
    expect(past(text, 'ammonia')).toBe(false);
  });
  it.each([
    'Sprayed lacquer over it and it wrinkled',
    'I shot it',
    'after spraying it went white',
    'finished spraying',
    'it was sprayed',
  ])('sprayed already: %s', (text) => {
    expect(isSprayedAlready(text)).toBe(true);
  });
  it.each([
    'I brushed it',
    'I sprayed it, can I spray again',
    'I sprayed it, should I spray more',
    'sprayed it, I am spraying now',
    'sprayed it, still spraying',
    'sprayed it, spray another',
    'sprayed it. Another coat now?',
    'sprayed it. Second coats, right?',
    'I sprayed, and spray on Mondays',
    'do not spray, he sprayed',
  ])('and not: %s', (text) => {
    expect(isSprayedAlready(text)).toBe(false);
  });
  it('another coat that is told asks nothing', () => {
    expect(isSprayedAlready('sprayed it. Another coat later it was dull')).toBe(true);
    expect(isSprayedAlready('sprayed another coat. Why?')).toBe(true);
  });
});
