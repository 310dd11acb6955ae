/** What the clock tells a walk is what a fact can be, whatever coat it has kept. Coats at random. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { AIR_CELSIUS } from '#engine/calc/air.ts';
import { factsOf } from '#engine/clock/facts.ts';
import { AMOUNT, MOST } from '#engine/model/card-limits.ts';
import { FACTS, isInFact } from '#engine/model/facts.ts';
import { keysOf } from '#engine/plain/entry-of.ts';
import { HOUR_MS as HOUR } from '#engine/plain/time.ts';
import { product } from '../calc/products.ts';

const between = ([min, max]: readonly [number, number]) => fc.double({ min, max, noNaN: true });
const coat = fc.record({
  id: fc.constant('a'),
  piece: fc.constant('Chair'),
  product: fc.constant('water-based-polyurethane'),
  laidAt: fc.constant(0),
  celsius: between(AIR_CELSIUS.kept),
  relativeHumidity: between([0, 1]),
  surfaceCelsius: fc.option(between(AIR_CELSIUS.kept), { nil: undefined }),
  coatNumber: fc.integer({ min: 1, max: MOST.coats }),
  amount: fc.option(
    fc.record({
      milliliters: between([AMOUNT.milliliters.min, AMOUNT.milliliters.max]),
      squareMeters: between([AMOUNT.squareMeters.min, AMOUNT.squareMeters.max]),
    }),
    { nil: undefined },
  ),
});

it('tells no number beyond the range of its fact', () => {
  const poly = product('water-based-polyurethane');
  fc.assert(
    fc.property(coat, fc.double({ min: 0, max: 20_000, noNaN: true }), (laid, hours) => {
      const on = factsOf(poly, laid, hours * HOUR);
      for (const name of keysOf(FACTS)) {
        const value = on[name]?.value;
        if (typeof value === 'number')
          expect([name, FACTS[name].kind, value]).toEqual([name, 'number', value]);
        if (FACTS[name].kind === 'number' && value !== undefined)
          expect([name, isInFact(name as 'coat-number', Number(value))]).toEqual([name, true]);
      }
    }),
  );
});

it('leaves out the number of a coat that no condition speaks of, and tells the twentieth', () => {
  const poly = product('water-based-polyurethane');
  const laid = (coatNumber: number) =>
    factsOf(
      poly,
      { id: 'a', piece: '', product: '', laidAt: 0, celsius: 21, relativeHumidity: 0.5, coatNumber },
      HOUR,
    );
  expect(laid(20)['coat-number']?.value).toBe(20);
  expect(laid(21)['coat-number']).toBeUndefined();
});
