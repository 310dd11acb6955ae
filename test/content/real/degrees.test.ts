/** A temperature said in both scales is one temperature: °F = °C × 9/5 + 32, and a difference, °F = °C × 9/5. */
import { expect, it } from 'vitest';
import { known } from './knowledge.ts';

/** A difference in temperature is never as large as this in what is said here, °C. */
const LARGEST_DIFFERENCE = 15;
const words = JSON.stringify([known.products, known.defects, known.remedies, known.rules, known.terms]);
const pairs = [
  ...[...words.matchAll(/(\d+) °C \((\d+) °F\)/g)].map(([said, celsius, fahrenheit]) => ({
    said,
    celsius,
    fahrenheit,
  })),
  ...[...words.matchAll(/(\d+) °F \((\d+) °C\)/g)].map(([said, fahrenheit, celsius]) => ({
    said,
    celsius,
    fahrenheit,
  })),
];
const agree = (celsius: number, fahrenheit: number): boolean =>
  Math.abs(celsius * 1.8 + 32 - fahrenheit) < 2.5 ||
  (celsius <= LARGEST_DIFFERENCE && Math.abs(celsius * 1.8 - fahrenheit) < 1.5);

it('reads enough pairs to mean something', () => expect(pairs.length).toBeGreaterThan(30));

it('agrees in every pair', () => {
  expect(pairs.filter(({ celsius, fahrenheit }) => !agree(Number(celsius), Number(fahrenheit)))).toEqual([]);
});

it('would find 27 °C said as 49 °F', () => expect(agree(27, 49)).toBe(false));
