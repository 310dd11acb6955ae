/** What the clock says of sanding while the film is thin. The limits: fewer than two coats (film-s113), 25 µm (film-s89). */
import { describe, expect, it } from 'vitest';
import { THIN } from '#engine/clock/thin.ts';
import { clockNow, type LaidCoat, type Reading, remindersOf, sayNow } from '#engine/clock.ts';
import { HOUR, plan, products, START } from '../jobs/cards.ts';
import { WORDS } from './words.ts';

const STYLE = { timeZone: 'UTC', hour12: true } as const;
const coat = (more: Partial<LaidCoat> = {}): LaidCoat => ({
  id: 'coat',
  piece: 'Chest',
  product: 'water-based-polyurethane',
  laidAt: START,
  celsius: 23,
  relativeHumidity: 0.5,
  coatNumber: 1,
  ...more,
});
const read = (laid: LaidCoat, after = 6 * HOUR): Reading => {
  const product = products[laid.product];
  if (!product) throw new Error('no such product');
  return clockNow(product, laid, START + after, products);
};
const isThin = (laid: LaidCoat): unknown => {
  const reading = read(laid);
  return reading.kind === 'running' && reading.thin;
};

it('takes its limits from the table that the card and the repairs go by', () => {
  expect(THIN).toEqual({
    coats: plan.sanding.coats.least,
    micrometers: plan.sanding.thin.micrometers,
  });
});

describe('a film is thin', () => {
  const amount = (micrometers: number) => ({ milliliters: micrometers, squareMeters: 1 });
  it('while it is one coat, however thick, and never of a finish in the wood', () => {
    expect(isThin(coat({ amount: amount(300) }))).toBe(true);
    expect(isThin(coat({ product: 'drying-oil' }))).toBe(false);
  });
  it('while two coats that are told leave less than the limit', () => {
    const two = (wet: number) =>
      coat({ coatNumber: 2, amount: amount(wet), below: [coat({ amount: amount(wet) })] });
    expect(isThin(two(20))).toBe(true);
    expect(isThin(two(100))).toBe(false);
  });
  it('by its count alone where a coat below is not told', () => {
    expect(isThin(coat({ coatNumber: 2, amount: amount(20) }))).toBe(false);
  });
});

it('says of a thin film to coat it, never to sand it over the whole face', () => {
  const first = read(coat());
  const said = sayNow(WORDS, first, START + 6 * HOUR, STYLE);
  expect(said.verdict).toMatch(/^Ready for the next coat/);
  expect(said.why).toContain('sand only what stands up');
  if (first.kind !== 'running') throw new Error('it runs');
  const titles = remindersOf(WORDS, first, coat(), START).map(({ title }) => title);
  expect(titles).toContain('Chest: ready for the next coat');
  expect(titles.join()).not.toMatch(/\bsand\b/);
  const second = sayNow(WORDS, read(coat({ coatNumber: 2 })), START + 6 * HOUR, STYLE);
  expect(second.verdict).toMatch(/^Ready to sand and recoat/);
});

it('has a thin film dulled, not sanded, once the next coat would not hold by itself', () => {
  const reading = read(coat());
  const deadline = reading.kind === 'running' ? reading.moments['sand-if-beyond']?.from : undefined;
  if (deadline === undefined) throw new Error('this kind has a deadline');
  const said = sayNow(WORDS, read(coat(), deadline + HOUR - START), deadline + HOUR, STYLE);
  expect(said.verdict).toBe('Dull it before the next coat');
  expect(said.why).toContain('no edge');
});
