/** What the script knows of stops at a check is what the rules say. */
import { expect, it } from 'vitest';
import { STOPS_AT_CHECK } from '../../site/shared/at-check.ts';
import { known } from '../content/real/knowledge.ts';

it('names each stop that asks something of a check, with the facts that it stands by', () => {
  const rules = known.rules.filter(({ checks }) => checks.length);
  expect(Object.fromEntries(rules.map(({ id, when }) => [id, when]))).toEqual(STOPS_AT_CHECK);
});
