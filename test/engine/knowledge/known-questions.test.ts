import { expect, it } from 'vitest';
import { ASKED } from '#engine/knowledge/known-questions.ts';
import { known } from './knowledge.ts';

it.each(Object.values(ASKED))('the engine asks of %s, which is a question', (id) => {
  expect(known.has('question', id)).toBe(true);
});
