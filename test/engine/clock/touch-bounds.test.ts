/** When a coat of an untold kind is dry to the touch. The cans are invented. */
import { expect, it } from 'vitest';
import { touchBounds } from '#engine/clock.ts';

const can = (family: 'shellac' | 'water-based' | 'oil', ...minutes: [number, number]) => ({
  family,
  'touch-minutes': minutes,
});

it('goes by the slowest can of a kind, and names none that it has no can of', () => {
  const cans = [
    can('shellac', 10, 60),
    can('water-based', 20, 40),
    can('water-based', 30, 61),
    can('oil', 400, 1441),
  ];
  expect(touchBounds(cans, ['shellac', 'water-based', 'oil', 'wax'])).toEqual({
    soon: ['shellac'],
    late: ['oil'],
    days: 2,
  });
  expect(touchBounds(cans, ['wax'])).toEqual({ soon: [], late: [], days: 0 });
});
