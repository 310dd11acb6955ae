/** A coat about to be laid, as facts for the rules: what is told and no more. Invented. */
import { describe, expect, it } from 'vitest';
import { coatStep, factsOfLaying, pieceOf } from '#engine/fitness/case.ts';
import type { Laying, LayingProduct } from '#engine/fitness/laying.ts';

const product = (family: string) => ({ family }) as unknown as LayingProduct;
const day = { celsius: 20, relativeHumidity: 0.5 };
const facts = (laying: Laying) =>
  Object.fromEntries(
    Object.entries(factsOfLaying(laying, product('oil-based'))).map(([name, { value }]) => [name, value]),
  );

describe('the facts', () => {
  it('are the kind of coat and the air where nothing else is told', () => {
    expect(facts({ day })).toEqual({ family: 'oil-based', 'air-celsius': 20 });
  });

  it('are each of what is told', () => {
    const all = {
      kind: 'furniture',
      base: 'stain',
      tone: 'wood',
      sheen: 'satin',
      applicator: 'brush',
    } as const;
    expect(facts({ ...all, age: 'before-1993', day })).toEqual({
      family: 'oil-based',
      piece: 'furniture',
      base: 'stain',
      'base-tone': 'wood',
      sheen: 'satin',
      applicator: 'brush',
      age: 'before-1993',
      'air-celsius': 20,
    });
    for (const [field, name] of [
      ['kind', 'piece'],
      ['base', 'base'],
      ['tone', 'base-tone'],
      ['sheen', 'sheen'],
      ['applicator', 'applicator'],
    ] as const)
      expect(Object.keys(facts({ [field]: all[field], day })).sort()).toEqual(
        ['air-celsius', 'family', name].sort(),
      );
  });

  it('count her own paint as paint since 1993, and the colder of day and night as the air', () => {
    expect(facts({ age: 'none', day })['age']).toBe('since-1993');
    expect(facts({ day, night: { celsius: 9 } })['air-celsius']).toBe(9);
    expect(facts({ day, night: { celsius: 24 } })['air-celsius']).toBe(20);
  });
});

it('what is done with a piece wins over what it is called, but not over a crib or what is valuable', () => {
  expect(pieceOf({ kind: 'furniture', trials: ['child'] })).toBe('childs-item');
  expect(pieceOf({ kind: 'furniture', trials: ['food'] })).toBe('food-surface');
  expect(pieceOf({ kind: 'furniture', trials: ['food', 'child'] })).toBe('childs-item');
  expect(pieceOf({ kind: 'furniture', trials: ['water'] })).toBe('furniture');
  expect(pieceOf({ kind: 'furniture' })).toBe('furniture');
  for (const kind of ['crib', 'valuable'] as const)
    expect(pieceOf({ kind, trials: ['child', 'food'] })).toBe(kind);
});

it('the step lays by spray what is sprayed, and by hand all else, with what it is', () => {
  const step = (applicator: Laying['applicator'], family = 'oil-based') =>
    coatStep({ applicator, day } as Laying, product(family));
  expect(step('spray-gun')).toMatchObject({ kind: 'coat', by: 'spray', product: 'same' });
  expect(step('aerosol')).toMatchObject({ by: 'spray' });
  for (const tool of ['brush', 'cloth', 'roller', undefined] as const)
    expect(step(tool)).toMatchObject({ by: 'hand' });
  expect(step('cloth', 'shellac')).toMatchObject({ product: 'dewaxed-shellac' });
  expect(step('cloth', 'wax')).toMatchObject({ product: 'wax' });
  expect(step('cloth', 'oil')).toMatchObject({ product: 'oil' });
});
