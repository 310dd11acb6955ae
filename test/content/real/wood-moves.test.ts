/** Wood that moves is mended by no coat, so nothing but where the lines run may rule it out. Common practice, no source. */
import { expect, it } from 'vitest';
import { nodesOf } from '#engine/index.ts';
import { visits } from '#engine/knowledge/tree.ts';
import { known } from './knowledge.ts';

/** Where the lines run, and that they are too faint to be seen, which asks for no work either. */
const TELLS = [
  ['cracks-along-the-grain', 'no'],
  ['line-at-a-joint', 'no'],
  ['seen-at-arms-length', 'no'],
] as const;
const moves = ({ cause }: { readonly cause?: string | undefined }): boolean => /\bmoves\b/.test(cause ?? '');

const flaws = known.defects.filter(({ tree }) =>
  [...visits(tree)].some(({ branch }) => 'leave' in branch && moves(branch)),
);

it('is a cause of cracks, of crazed shellac and of lines that show through', () => {
  expect(flaws.map(({ id }) => id)).toEqual(['cracking', 'shellac-crazing', 'telegraphing']);
});

for (const { id } of flaws)
  it(`${id}: only an answer about joints and grain leaves it out`, () => {
    const without = [...nodesOf(known, id)].filter(
      ({ walked, on }) =>
        !walked.leaves.some(moves) && !TELLS.some(([question, answer]) => on[question]?.value === answer),
    );
    expect(without.map(({ address }) => address.join('/'))).toEqual([]);
  });
