import { expect, it } from 'vitest';
import { nodesOf } from '#engine/index.ts';
import { known } from './knowledge.ts';

it('an end that waits for a check says which', () => {
  const waits = ['unsure', 'begin'].map((doing) => known.get('doing', doing).verdict);
  const waiting = known.defects.flatMap(({ id }) =>
    [...nodesOf(known, id)].flatMap(({ walked, address }) =>
      walked.kind === 'outcome' && waits.includes(walked.action.verdict)
        ? [{ page: [id, ...address].join('/'), check: walked.check }]
        : [],
    ),
  );
  expect(waiting.length).toBeGreaterThan(100);
  expect(waiting.filter(({ check }) => !check).map(({ page }) => page)).toEqual([]);
});
