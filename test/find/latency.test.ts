import Fuse from 'fuse.js';
import { expect, it } from 'vitest';
import { buildIndex, find } from '#engine/find.ts';
import { corpus, phrases, words } from './phrases.ts';

/** Every 97th keystroke of all phrases: what was typed so far. */
const keystrokes = phrases.good
  .flatMap(({ say }) => Array.from({ length: say.length }, (_, at) => say.slice(0, at + 1)))
  .filter((_, at) => at % 97 === 0);

const p95 = (answer: (query: string) => unknown): number => {
  const took = keystrokes.map((query) => {
    const start = performance.now();
    answer(query);
    return performance.now() - start;
  });
  return took.toSorted((a, b) => a - b)[Math.floor(took.length * 0.95)] ?? Number.POSITIVE_INFINITY;
};

it('takes a small part of the time of plain Fuse a keystroke, at the 95th percentile', {
  timeout: 60_000,
}, () => {
  const index = buildIndex(corpus, words);
  const fuse = new Fuse(corpus, { keys: ['title', 'also', 'signs', 'text'] });
  const own = p95((query) => find(index, query, { limit: 8, typing: true }));
  const plain = p95((query) => fuse.search(query, { limit: 8 }));
  expect(own / plain).toBeLessThanOrEqual(0.15);
});
