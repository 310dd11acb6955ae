/** Coats that come on the clock, change on it and go off it. The coats are invented. */
import { describe, expect, it } from 'vitest';
import { emptyStore, type LaidCoat, layOnClock, replaceOnClock, takeOffClock } from '#engine/clock.ts';
import { product } from '../calc/products.ts';

const NOW = Date.UTC(2026, 10, 24, 17);
const POLY = 'water-based-polyurethane';
const products = { [POLY]: product(POLY), shellac: product('shellac') };
const coat = (id: string, more: Partial<LaidCoat> = {}): LaidCoat => ({
  id,
  piece: id,
  product: POLY,
  laidAt: NOW,
  celsius: 23,
  relativeHumidity: 0.5,
  coatNumber: 1,
  ...more,
});
const on = { ...emptyStore(), coats: [coat('a'), coat('b'), coat('c')], current: 'b', seenAt: 5 };

describe('a coat that is laid', () => {
  it('lies on top, ends the choice of another, and brings its own product and no other', () => {
    const after = layOnClock(on, { coat: coat('d'), products, now: NOW });
    expect(after.coats.map(({ id }) => id)).toEqual(['d', 'a', 'b', 'c']);
    expect(after).toMatchObject({ current: undefined, seenAt: NOW });
    expect(Object.keys(after.products)).toEqual([POLY]);
  });
  it('buries the one below, and keeps the products that are there where its own is not known', () => {
    const before = { ...on, products: { shellac: products.shellac } };
    const after = layOnClock(before, {
      coat: coat('d', { piece: 'A', product: 'constructor' }),
      products,
      now: NOW,
    });
    expect(after.coats.map(({ id }) => id)).toEqual(['d', 'b', 'c']);
    expect(after.coats[0]?.below?.map(({ id }) => id)).toEqual(['a']);
    expect(after.products).toEqual({ shellac: products.shellac });
  });
});

describe('a coat in the place of others', () => {
  it('stands where the first of them stood, and is looked at where one of them was', () => {
    const after = replaceOnClock(on, ['c', 'b'], { coat: coat('x', { product: 'shellac' }), products });
    expect(after.coats.map(({ id }) => id)).toEqual(['a', 'x']);
    expect(after).toMatchObject({ current: 'x', seenAt: 5, products: { shellac: products.shellac } });
    expect(replaceOnClock(on, ['a'], { coat: coat('x'), products }).current).toBe('b');
  });
  it('does nothing where none of them is on the clock', () => {
    expect(replaceOnClock(on, ['z'], { coat: coat('x'), products })).toBe(on);
    expect(replaceOnClock(on, [], { coat: coat('x'), products })).toBe(on);
  });
});

it('takes one coat off, and does nothing where it is off', () => {
  expect(takeOffClock(on, 'b').coats.map(({ id }) => id)).toEqual(['a', 'c']);
  expect(takeOffClock(on, 'z')).toBe(on);
});
