/**
 * Which of several values is meant, worked by hand; of kinds of top coat the one that lies on top.
 */
import { describe, expect, it } from 'vitest';
import { familyOf } from '#engine/hear/choices/family.ts';
import { type Mention, settled, withoutBeaten } from '#engine/hear/words/mention.ts';

describe('which of several is meant', () => {
  const mention = (value: string, from: number, more: Partial<Mention> = {}): Mention => ({
    value,
    weight: 0.72,
    span: { from, to: from + 1 },
    place: undefined,
    ...more,
  });
  it('the one that most speaks for; what speaks for another stands against it', () => {
    const one = settled('piece', [mention('crib', 0)], []);
    expect(one).toMatchObject([{ value: 'crib', rests: [{ from: 0, to: 1 }], against: [] }]);
    const twice = settled('piece', [mention('crib', 0), mention('crib', 2)], []);
    expect(twice[0]?.sure).toBeGreaterThan(one[0]?.sure ?? 1);
    const two = settled(
      'piece',
      [mention('crib', 0), mention('tabletop', 2, { weight: 0.9 })],
      [{ from: 9, to: 10 }],
    );
    expect(two[0]).toMatchObject({
      value: 'tabletop',
      rests: [{ from: 2, to: 3 }],
      against: [
        { from: 0, to: 1 },
        { from: 9, to: 10 },
      ],
    });
    expect(two[0]?.sure).toBeLessThan(0.92);
    const near = settled('piece', [mention('crib', 0), mention('tabletop', 2, { weight: 0.75 })], []);
    expect(near[0]?.sure).toBeLessThan(0.7);
    expect(settled('piece', [], [])).toEqual([]);
    expect(settled('piece', [mention('crib', 0, { weight: 5 })], [])[0]?.sure).toBeLessThanOrEqual(0.95);
  });
  it('paint lies over wood and old finish, and what is surely old over what may be', () => {
    const left = (
      fact: 'base' | 'base-tone' | 'age' | 'family' | 'applicator' | 'piece',
      ...values: string[]
    ) =>
      withoutBeaten(
        fact,
        values.map((value, at) => mention(value, at)),
      ).map(({ value }) => value);
    for (const tone of ['dark', 'light']) expect(left('base-tone', 'wood', tone)).toEqual([tone]);
    for (const paint of ['chalk-paint', 'milk-paint'])
      expect(left('base', 'old-finish', 'bare-wood', 'stain', paint)).toEqual([paint]);
    for (const paint of ['latex-paint', 'oil-paint'])
      expect(left('base', 'old-finish', 'bare-wood', 'stain', paint)).toEqual(['stain', paint]);
    expect(left('base', 'bare-wood', 'stain')).toEqual(['stain']);
    expect(left('age', 'unknown', 'since-1993', 'before-1993')).toEqual(['before-1993']);
    expect(left('family', 'lacquer', 'water-lacquer')).toEqual(['water-lacquer']);
    expect(left('family', 'oil', 'wax', 'hardwax-oil')).toEqual(['hardwax-oil']);
    expect(left('applicator', 'spray-gun', 'aerosol')).toEqual(['aerosol']);
    expect(left('applicator', 'brush', 'sponge')).toEqual(['sponge']);
    expect(left('applicator', 'brush', 'aerosol')).toEqual(['brush', 'aerosol']);
    expect(left('piece', 'crib', 'tabletop')).toEqual(['crib', 'tabletop']);
  });
  it('of kinds of top coat: what lies on top, what was laid last, what was named last', () => {
    const family = (all: readonly Mention[], open: readonly Mention[] = []) => {
      const { facts, among } = familyOf(all, open, []);
      return facts[0]?.value ?? among[0]?.values.join('|');
    };
    expect(family([mention('oil', 0), mention('shellac', 2)])).toBe('shellac');
    expect(family([mention('shellac', 0, { place: 'top' }), mention('oil', 2)])).toBe('shellac');
    expect(family([mention('shellac', 0), mention('oil', 2, { place: 'below' })])).toBe('shellac');
    expect(family([mention('shellac', 0, { laid: true }), mention('oil', 2)])).toBe('shellac');
    expect(family([mention('shellac', 0, { laid: true }), mention('oil', 2, { laid: true })])).toBe('oil');
    // Wax that is rubbed over a film is no top coat of its own.
    expect(family([mention('lacquer', 0), mention('wax', 2)])).toBe('lacquer');
    expect(family([mention('lacquer', 0, { place: 'below' }), mention('wax', 2)])).toBe('wax');
    expect(family([mention('oil', 0), mention('wax', 2)])).toBe('wax');
    const poly = (from: number, more: Partial<Mention> = {}) => mention('oil-based|water-based', from, more);
    expect(family([], [poly(0)])).toBe('oil-based|water-based');
    expect(family([mention('wax', 2)], [poly(0, { laid: true })])).toBe('oil-based|water-based');
    expect(family([mention('wax', 2)], [poly(0)])).toBe('wax');
    // Named last it was laid last, over what often lies below.
    expect(family([mention('shellac', 0)], [poly(2)])).toBe('oil-based|water-based');
    expect(family([mention('shellac', 0, { place: 'top' })], [poly(2)])).toBe('shellac');
    expect(family([mention('water-lacquer', 0)], [poly(2)])).toBe('water-lacquer');
    expect(family([mention('oil-based', 0)], [poly(2)])).toBe('oil-based');
    expect(family([mention('shellac', 0, { place: 'below' })], [poly(2)])).toBe('oil-based|water-based');
    const below = familyOf([mention('shellac', 0, { place: 'below' })], [], []);
    expect(below.facts[0]).toMatchObject({ value: 'shellac' });
    expect(below.facts[0]?.sure).toBeLessThan(0.7);
    expect(family([], [])).toBeUndefined();
  });
});
