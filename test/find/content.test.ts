import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { buildIndex, documentsOf } from '#engine/find.ts';
import { provenKnowledge } from '../../content/tools/knowledge.ts';
import { phrases, words } from './phrases.ts';
import { score } from './score.ts';

const { known } = provenKnowledge(fileURLToPath(new URL('../..', import.meta.url)));

// Content that does not prove is another test's to report.
describe.skipIf(!known)('the search on the content', () => {
  const documents = known ? documentsOf(known) : [];
  const covers = new Map(known?.defects.map((defect) => [defect.id as string, defect.covers]));
  const index = buildIndex(documents, words);

  it('has a page for every flaw of the phrases', () => {
    const covered = new Set([...covers.values()].flat());
    expect(phrases.good.flatMap(({ is }) => is).filter((id) => !covered.has(id))).toEqual([]);
  });

  it.each([
    ['all', phrases],
    ['held-out', { ...phrases, good: phrases.good.filter(({ heldOut }) => heldOut) }],
  ])('meets its goals on %s phrases', (_, set) => {
    const { first, inThree, misspelledInThree, lost, silent } = score(
      index,
      set,
      (id) => covers.get(id) ?? [],
    );
    expect.soft(first).toBeGreaterThanOrEqual(0.9);
    expect.soft(inThree).toBeGreaterThanOrEqual(0.97);
    expect.soft(misspelledInThree).toBeGreaterThanOrEqual(0.95);
    expect.soft(lost).toBeLessThanOrEqual(0.02);
    expect.soft(silent).toBeGreaterThanOrEqual(0.9);
  });
});
