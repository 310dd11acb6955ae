/** What is only planned or asked of coats and tools answers no question of work. Invented sentences. */
import { expect, it } from 'vitest';
import { sign } from './hearing.ts';

it.each([
  ['I skipped sanding.', 'base-left-shiny', 'yes'],
  ['It was waxed.', 'ever-waxed-or-polished', 'yes'],
  ['Should I skip sanding?', 'base-left-shiny', undefined],
  ['Can it be waxed?', 'ever-waxed-or-polished', undefined],
  // What is asked of a sign says that it is there.
  ['Should I sand these wrinkles?', 'wrinkled', 'yes'],
])('%s', (text, question, answer) => {
  expect(sign(text, question)).toBe(answer);
});
