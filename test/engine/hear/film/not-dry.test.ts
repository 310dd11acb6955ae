/**
 * A word of dryness that is of no film, word by word, in pairs of sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { isHowItIsDone, isInCan, isNotYetDry, isOfThen } from '#engine/hear/film/not-dry.ts';
import type { Match } from '#engine/hear/words/match.ts';
import { marked } from '../marked.ts';

const matchOf = ({ from, to }: { from: number; to: number }, more: Partial<Match> = {}): Match => ({
  sense: '',
  kind: '',
  of: [],
  from,
  to,
  size: to - from,
  ...more,
});

const dry = (is: (words: ReturnType<typeof marked>['words'], match: Match) => boolean) => (text: string) => {
  const { words, from, to } = marked(text);
  return is(words, matchOf({ from, to }));
};

describe('a word of dryness', () => {
  const notYet = dry(isNotYetDry);
  it.each([
    'until it is [dry]',
    'before it is [dry]',
    'should be [dry]',
    'it will be [hard]',
    'if it is [dry]',
    'the can says [dry]',
    'let it get [dry]',
    'I thought it was [dry]',
    'how [dry] is it',
    'it must be [dry]',
    'it needs to be [hard]',
    'it is [fully cured], or so I thought',
    'it is [hard], I guess',
    'the room [dry]',
    'my brush [dry]',
    '[dry] spots in it',
    '[dry] patch',
    '[dry] wood',
    'it is [hard] to see',
    '[hard] wax',
    '[hard] edges',
    '[hard] water',
    'is it [dry]?',
    'are they [hard] now?',
    '[is it dry] now?',
    'I [dried] the brush',
    'I [dried] it',
    'he [dried] my tools',
    'it has to [dry]',
    'washed with spirits, [dried]',
    'rinsed, [dried], then coated',
  ])('is of no film that is dry: %s', (text) => {
    expect(notYet(text)).toBe(true);
  });
  it.each([
    'it is [dry]',
    'the poly is [hard]',
    'it is [fully cured]',
    'until then it was wet, because it is [dry]',
    'it is [dry] now. If only',
    'the poly, [dry] on top',
    'it [dried] the whole night',
    'it [dried] the first day',
    'it [dried] hard',
    'it is [cured] to look at',
    'it is [hard]. To me',
    'coated, [dried]',
    'it is [hard] as nails',
    'they are [dry]. Thought so',
  ])('is of one: %s', (text) => {
    expect(notYet(text)).toBe(false);
  });

  const how = dry(isHowItIsDone);
  it.each([
    'I [dry] sanded it',
    'a [wet] sanding',
    '[dry] sand it',
    '[wet] sandpaper',
    'it [dried] quickly',
    'it [dried] so fast',
    'it [dries] too slow',
    'it [dried] very quickly',
    'it [dried] within a day',
  ])('of how it is done: %s', (text) => {
    expect(how(text)).toBe(true);
  });
  it.each([
    'it is [dry], sand it',
    'it is [wet] now',
    'it [dried] so I sanded',
    'it [dried] hard',
    'it is [hard] fast',
    'it [dried]',
    'it [dried] very hard',
  ])('and not: %s', (text) => {
    expect(how(text)).toBe(false);
  });

  const then = dry(isOfThen);
  it.each([
    'while it was [tacky]',
    'when it was still [wet]',
    'before they were [dry]',
    'a cloth that is [wet]',
    'my hands are [wet]',
    'the grass is [wet]',
  ])('of how it was then: %s', (text) => {
    expect(then(text)).toBe(true);
  });
  it.each([
    'while it is [tacky]',
    'it was [tacky]',
    'when I press, it was [tacky]',
    'a cloth that is [sticky]',
    'the poly is [wet]',
    'it was so when it is [tacky]',
  ])('and of now: %s', (text) => {
    expect(then(text)).toBe(false);
  });

  const inCan = dry(isInCan);
  it.each(['the can of poly is [sticky]', 'in the jar it is [thick]', 'two tins are [hard]'])(
    'of a can: %s',
    (text) => {
      expect(inCan(text)).toBe(true);
    },
  );
  it.each(['the can, it is [sticky]', 'I can tell it is [sticky]', 'it is [sticky] in the can'])(
    'and of a film: %s',
    (text) => {
      expect(inCan(text)).toBe(false);
    },
  );
});
