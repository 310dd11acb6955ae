/**
 * How long each kind takes to dry, from invented products.
 */
import { expect, it } from 'vitest';
import { dryHoursOf } from '#engine/hear/film/dry.ts';

it('a kind dries as long as the slowest of its products', () => {
  const product = (family: string, touch: number, recoat: number) => ({
    family,
    'touch-minutes': [1, touch],
    'recoat-hours': [1, recoat],
  });
  expect(
    dryHoursOf({ products: [product('oil', 60, 8), product('oil', 120, 4), product('wax', 30, 1)] } as never),
  ).toEqual({ oil: [2, 8], wax: [0.5, 1] });
});
