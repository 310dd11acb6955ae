import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { dryFilmMicrometers, wetFilmFromCoverage } from '#engine/calc/film.ts';
import { FAMILIES } from '#engine/model/family.ts';
import { Product } from '#engine/model/product.ts';
import { good } from './good.ts';
import { PRODUCTS, rawProduct } from './products.ts';

describe.each([...PRODUCTS])('%s', (_id, product) => {
  test('every claim that needs a source has one, and the source is there', () => {
    for (const { says, grade, source } of product.claims) {
      expect(source !== undefined, says).toBe(grade === 'published' || grade === 'from-memory');
      if (source)
        expect(existsSync(new URL(`../../../content/sources/${source}.mdx`, import.meta.url)), source).toBe(
          true,
        );
    }
  });

  test('the film that its coverage leaves is one that its tools lay', () => {
    const [least, most] = product['square-meters-per-liter'];
    const films = Object.values(product['wet-film-micrometers']);
    const thinnest = Math.min(...films.map(([from]) => from));
    const thickest = Math.max(...films.map(([, to]) => to));
    // Oils and waxes are wiped back, so more is spread than stays; a gun or can loses some on the way.
    const lost = ['oil', 'wax', 'lacquer', 'hardwax-oil'].includes(product.family) ? 4 : 1.6;
    expect(good(wetFilmFromCoverage(most))).toBeLessThanOrEqual(thickest * 1.05);
    expect(good(wetFilmFromCoverage(least))).toBeLessThanOrEqual(thickest * lost);
    expect(good(wetFilmFromCoverage(least))).toBeGreaterThanOrEqual(thinnest);
    expect(product['reference-wet-film-micrometers']).toBeGreaterThanOrEqual(thinnest);
    expect(product['reference-wet-film-micrometers']).toBeLessThanOrEqual(thickest);
  });

  test('one coat dries to less than the 75 µm that a whole system may be', () => {
    const dry = good(
      dryFilmMicrometers(product['reference-wet-film-micrometers'], Math.max(...product['volume-solids'])),
    );
    expect(dry).toBeLessThan(75);
  });

  test('what forms from droplets has a least temperature', () => {
    expect(product['film-formation-celsius'] !== undefined).toBe(product.mechanism === 'coalescence');
    expect(product.thinner === 'water').toBe(product.mechanism === 'coalescence');
  });
});

test('every family has a product', () => {
  const found = new Set([...PRODUCTS.values()].map(({ family }) => family));
  expect(FAMILIES.filter((family) => !found.has(family))).toEqual([]);
});

describe('a broken product is named', () => {
  const faults = (change: Record<string, unknown>) => {
    const result = Product.safeParse({ ...rawProduct('shellac'), ...change });
    return result.error?.issues.map(({ path, message }) => `${path.join('.')}: ${message}`) ?? [];
  };

  test('as it stands it has no fault', () => expect(faults({})).toEqual([]));

  test.each([
    [{ 'recoat-hours': [2, 1] }, 'recoat-hours: write the smaller number first'],
    [
      { 'touch-minutes': [90, 200] },
      'recoat-hours: it is less than touch-minutes: raise it, or lower touch-minutes',
    ],
    [
      { 'sand-if-beyond-hours': [0.5, 1] },
      'sand-if-beyond-hours: it is less than recoat-hours: raise it, or lower recoat-hours',
    ],
    [
      { 'film-formation-celsius': [5, 10] },
      'film-formation-celsius: no claim stands behind it: add film-formation-celsius to the for: of a claim',
    ],
    [
      { best: { celsius: [5, 24], humidity: [0.3, 0.5] } },
      'best.celsius: keep it inside what limits: says, 10 to 30',
    ],
    [{ 'wet-film-micrometers': {} }, 'wet-film-micrometers: name at least one applicator'],
  ])('%o', (change, fault) => expect(faults(change)).toContain(fault));

  test('an unknown key', () => expect(faults({ brand: 'x' }).join()).toContain('brand'));
});
