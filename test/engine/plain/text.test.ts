import { expect, it } from 'vitest';
import { ended, firstSentence, lower, upper } from '#engine/plain/text.ts';

it('turns the first letter alone', () => {
  expect([upper('dry it'), upper('US grade'), upper('')]).toEqual(['Dry it', 'US grade', '']);
  expect([lower('Dry It'), lower('°F'), lower('')]).toEqual(['dry It', '°F', '']);
});

it('ends a title with one mark', () => {
  expect(['Wash it off', 'Is it old?', 'Stop!', 'No.'].map(ended)).toEqual([
    'Wash it off.',
    'Is it old?',
    'Stop!',
    'No.',
  ]);
});

// What a short reply has of a caution: a point within a figure ends no sentence.
it('takes the first sentence whole', () => {
  expect(firstSentence('Wait 2.5 hours. Then sand.')).toBe('Wait 2.5 hours.');
  expect(firstSentence('Is it hot? Pour water on it.')).toBe('Is it hot?');
  expect(firstSentence('Hands off')).toBe('Hands off');
  expect(firstSentence('Hands off\nuntil it is dry. Then look.')).toBe('Hands off\nuntil it is dry.');
});
