/** What is told of where statements come from is all of it, and leads to where it stands. */
import { expect, it } from 'vitest';
import { GRADES } from '#engine/model/source.ts';
import { claimsBySource, statementsByGrade, statementsOf } from '../../site/build/provenance.ts';
import { known } from '../content/real/knowledge.ts';

it('lists as many statements of each grade as it counts', () => {
  const counts = statementsByGrade(known);
  for (const grade of GRADES) expect(statementsOf(known, grade).length).toBe(counts.get(grade) ?? 0);
  expect(statementsOf(known, 'published').length).toBeGreaterThan(500);
});

it('knows of no statement that rests on a source and is counted nowhere', () => {
  const resting = [...claimsBySource(known).values()].reduce((sum, { length }) => sum + length, 0);
  const counted = [...statementsByGrade(known).values()].reduce((sum, count) => sum + count, 0);
  expect(resting).toBeGreaterThan(500);
  expect(resting).toBeLessThanOrEqual(counted);
});
