/** What the script knows of stops at a check is what the rules say. */
import { expect, it } from 'vitest';
import { atCheckData } from '../../site/shared/at-check.ts';
import { known } from '../content/real/knowledge.ts';

it('tells each stop that asks something of a check, with the facts that it stands by, and no other rule', () => {
  const data = atCheckData(known);
  expect(data.map(({ id }) => id)).toEqual(
    known.rules.filter(({ checks }) => checks.length).map(({ id }) => id),
  );
  expect(data.length).toBeGreaterThan(0);
  for (const { id, when, checks } of data) {
    expect(when, id).toEqual(known.get('rule', id).when);
    expect(
      checks.every(({ by, say }) => by.length && say),
      id,
    ).toBe(true);
  }
});
