/**
 * What the whole of a text tells, on a small invented lexicon. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { heardBySmall } from './small-ear.ts';

describe('the whole of a text', () => {
  const facts = (text: string) =>
    Object.fromEntries(
      heardBySmall(text)
        .facts.filter(({ sure }) => sure >= 0.7)
        .map(({ fact, value }) => [fact, value]),
    );
  it('takes the longer phrase before those inside it', () => {
    expect(facts('oil stain')).toEqual({ base: 'stain' });
    expect(facts('oil')).toMatchObject({ family: 'oil' });
    expect(facts('table salt')).not.toHaveProperty('piece');
    expect(facts('a table')).toMatchObject({ piece: 'tabletop' });
    expect(facts('chalk paint and old finish')).toMatchObject({ base: 'chalk-paint' });
  });
  it('of several pieces takes the one that demands most care', () => {
    expect(facts('a table and a crib')).toMatchObject({ piece: 'crib' });
    expect(facts('no crib, a table')).toMatchObject({ piece: 'tabletop' });
    expect(facts('can I use the table?')).toMatchObject({ piece: 'tabletop' });
  });
  it('takes what is only asked or denied for nothing told', () => {
    expect(facts('can I use oil')).toEqual({});
    expect(facts('no oil')).toEqual({});
    expect(facts('my buddy swears by oil')).toEqual({});
  });
});
