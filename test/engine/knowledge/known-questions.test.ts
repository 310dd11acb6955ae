import { expect, it } from 'vitest';
import { ASKED } from '#engine/knowledge/known-questions.ts';
import { known } from '../../content/real/knowledge.ts';

it.each(Object.values(ASKED))('the engine asks of %s, which is a question', (id) => {
  expect(known.has('question', id)).toBe(true);
});

it('each goes by the name of its question', () => {
  const named = (id: string) => id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
  expect(Object.keys(ASKED)).toEqual(Object.values(ASKED).map(named));
  expect(Object.keys(ASKED)).not.toEqual([]);
});
