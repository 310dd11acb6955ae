/**
 * A question that is answered with a drop or a rag of solvent says with how it is done that no flame may be near: a
 * walk shows a question alone, with no step or rule beside it. Vapor that lights far off is what the rule on vapor and
 * flame rests on (a fire-prevention handbook; a utility's sheet of 1994 on water heaters).
 */
import { describe, expect, it } from 'vitest';
import { hazardsSaid } from '../../../engine/prove/hazard-words.ts';
import { known } from './knowledge.ts';

const WITH_SOLVENT =
  /\b(damp|wet|clean) with\b.*\b(spirits|alcohol|naphtha|thinner)\b|\b(drop of|little)\b.*\b(alcohol|thinner|spirits)\b/i;
const usesSolvent = (say: string): boolean => hazardsSaid(say).has('vapor') || WITH_SOLVENT.test(say);

const told = known.questions.flatMap(({ id, how, sure }) =>
  Object.entries({ how, sure }).flatMap(([field, say]) => (usesSolvent(say) ? [{ id, field, say }] : [])),
);

describe('a question that takes a solvent', () => {
  it('is found', () => {
    expect(told.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['softens-with-alcohol', 'softens-with-thinner', 'goes-with-mineral-spirits']),
    );
  });

  it.each(told)('$id says under $field that no flame may be near', ({ say }) => {
    expect(say).toMatch(/\bno flame\b/i);
  });
});
