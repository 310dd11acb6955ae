import { expect, it } from 'vitest';
import { waitWords } from '../../site/shared/span.ts';

// Common practice, no source: nobody says a quarter of an hour in hours, or a week.
it.each([
  [[0.1, 0.25], '6–15 min'],
  [[0.2, 1], '12–60 min'],
  [[0.5, 24], '30 min–24 h'],
  [[1, 2], '1–2 h'],
  [[24, 24], '24 h'],
  [[24, 48], '24–48 h'],
  [[24, 72], '1–3 days'],
  [[12, 72], '12–72 h'],
  [[168, 336], '7–14 days'],
  [[72, 72], '3 days'],
] as const)('says %j as %s', (hours, words) => {
  expect(waitWords(hours)).toBe(words);
});
