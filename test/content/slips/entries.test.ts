/** Slips of an author's hand, made in memory: each is told with its file, its line and a way out. */
import { expect, it } from 'vitest';
import { link } from '#engine/link.ts';
import { readContent } from '../../../content/tools/read.ts';
import { retired } from '../real/knowledge.ts';
import { ENTRY_SLIPS } from './entry-slips.ts';
import { missed, slipped } from './slipped.ts';

// Of some kinds there are fewer files than slips: they are made in turns.
const turns = (size: number) =>
  Array.from(
    { length: Math.ceil(Math.max(...Object.values(ENTRY_SLIPS).map((list) => list.length)) / size) },
    (_, turn) =>
      Object.fromEntries(
        Object.entries(ENTRY_SLIPS).map(([kind, list]) => [kind, list.slice(turn * size, (turn + 1) * size)]),
      ),
  );

it('tells a slip in an entry of any kind with its file, its line and a way out', () => {
  const wrong: string[] = [];
  let made = 0;
  for (const turn of turns(18)) {
    const { root, done } = slipped(turn);
    const linked = link(readContent(root), retired);
    wrong.push(...missed(done, linked.ok ? [] : linked.issues));
    made += done.length;
  }
  expect(wrong.join('\n')).toBe('');
  expect(made).toBeGreaterThan(95);
});
