import { describe, expect, it } from 'vitest';
import { packTerms, type Term, unpackTerms } from '#engine/find/terms.ts';
import { fc } from './word-arbitrary.ts';

describe('terms', () => {
  it('are the same after they were packed', () => {
    fc.assert(
      fc.property(fc.word(), fc.word(), fc.word(), (stem, other, form) => {
        const terms: Term[] = [[stem, form, other], [other], [other, form, stem]];
        expect(unpackTerms(packTerms(terms))).toEqual(terms);
      }),
    );
  });

  it('are written as what they do not share', () => {
    expect(packTerms([['peel', 'peeled', 'peels'], ['peg'], ['cav', 'caving']])).toBe(
      'Apeel Aed As,Cg,Acav Aing',
    );
  });

  it('of more letters than there are capitals come back, too', () => {
    const long = 'a'.repeat(30);
    const terms: Term[] = [[long], [`${long}b`, `${long}s`]];
    expect(unpackTerms(packTerms(terms))).toEqual(terms);
  });

  it('refuse a form that shares nothing with a very long stem', () => {
    expect(() => packTerms([['a'.repeat(30), 'b']])).toThrow(RangeError);
  });
});
