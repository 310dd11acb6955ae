/** A query that ends in how dry it is. Phrases of our own, invented. */
import { describe, expect, it } from 'vitest';
import { SURE } from '#engine/hear.ts';
import { fact } from '../hearing.ts';

const stage = (text: string) => {
  const found = fact(text, 'stage');
  return found && found.sure >= SURE ? found.value : undefined;
};

describe('a stage at the end of a query', () => {
  it.each([
    ['milky over navy, wet', 'wet'],
    ['milky wet', 'wet'],
    ['bubbles in the poly - wet', 'wet'],
    ['brush marks. still wet', 'wet'],
    ['cloudy, dry', 'dry-to-touch'],
    ['streaks, dry to the touch', 'dry-to-touch'],
    ['orange peel, cured', 'cured'],
  ])('is heard in "%s"', (text, wanted) => expect(stage(text)).toBe(wanted));

  it.each([
    'wet',
    'wet spots',
    'white when wet',
    'gone when wet',
    'is it milky, wet or dry',
    'milky, wet?',
    'the wood was wet',
  ])('is not heard in "%s"', (text) => expect(stage(text)).toBeUndefined());

  it('is no end of a story', () =>
    expect(
      stage('I stripped it, stained it and laid a coat, it went milky in the corners, the rag was wet'),
    ).toBeUndefined());
});
