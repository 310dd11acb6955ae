/** What comes from the device: its clock, what was typed into the form, and what was kept. */
import { expect, it } from 'vitest';
import { checkCoat, clockDoubt, jumpedBack, laidBeforeClocks, readStore, sayDoubt } from '#engine/clock.ts';
import { coat, HOUR, LAID, MINUTE, poly, STYLE } from './running-coat.ts';
import { WORDS } from './words.ts';

it('tells a clock of the device that went back, but not a small correction', () => {
  expect(jumpedBack(LAID, LAID - 90 * MINUTE)).toBe(90);
  expect(jumpedBack(LAID, LAID - MINUTE)).toBe(0);
  expect(jumpedBack(LAID, LAID + HOUR)).toBe(0);
});

it.each([
  [{ celsius: 60 }, 'celsius', true],
  [{ relativeHumidity: 1.3 }, 'relativeHumidity', true],
  [{ surfaceCelsius: 140 }, 'surfaceCelsius', true],
  [{ surfaceCelsius: 5, relativeHumidity: 0.8 }, 'surfaceCelsius', false],
  [{ celsius: 5 }, 'celsius', false],
  [{ coatNumber: 0 }, 'coatNumber', true],
  [{ amount: { milliliters: 1000, squareMeters: 0.1 } }, 'amount', true],
  [{ label: { minutes: { recoat: { from: 0, to: 0 } } } }, 'label-recoat', true],
] as const)('finds the fault of %j beside its field', (over, field, stops) => {
  const faults = checkCoat(WORDS, poly, { ...coat, ...over }, LAID, STYLE);
  expect(faults.map((fault) => [fault.field, fault.stops])).toContainEqual([field, stops]);
  for (const { says } of faults) expect(says.length).toBeGreaterThan(20);
});

it.each([null, undefined, 7, '[]', { version: 2 }, { version: 1, coats: 'none' }])(
  'reads %j as no coat',
  (kept) => {
    expect(readStore(kept).store.coats).toEqual([]);
  },
);

it('keeps the coats that read and counts those that do not', () => {
  const kept = JSON.parse(
    JSON.stringify({ version: 1, coats: [coat, { id: 1 }], products: { x: {} }, seenAt: 'now' }),
  );
  const { store, lost } = readStore(kept);
  expect(store.coats).toEqual([coat]);
  expect(lost).toBe(1);
  expect(store.products).toEqual({});
});

it('doubts a device whose clock went back, far ahead or was never set', () => {
  expect(clockDoubt(LAID, LAID - 5 * HOUR)).toMatchObject({ kind: 'back', minutes: 300 });
  expect(clockDoubt(LAID, LAID + 400 * 24 * HOUR)).toMatchObject({ kind: 'ahead' });
  const ahead = clockDoubt(LAID, LAID + 400 * 24 * HOUR);
  expect(ahead && sayDoubt(WORDS, ahead, LAID + 400 * 24 * HOUR, STYLE)).toContain('2027');
  expect(clockDoubt(1000, LAID)).toMatchObject({ kind: 'ahead' });
  expect(clockDoubt(0, 1000)).toMatchObject({ kind: 'unset' });
  expect(clockDoubt(0, LAID)).toBeUndefined();
  expect(clockDoubt(LAID, LAID + 30 * 24 * HOUR)).toBeUndefined();
  expect([laidBeforeClocks(1000), laidBeforeClocks(LAID)]).toEqual([true, false]);
});
