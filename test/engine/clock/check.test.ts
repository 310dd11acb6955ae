/** What the clock asks about and what it refuses, at the borders that its own rules name. Invented coats. */
import { describe, expect, it } from 'vitest';
import { askAboutLabel, checkCoat, type LaidCoat } from '#engine/clock.ts';
import { product } from '../calc/products.ts';
import { WORDS } from './words.ts';

const DAY = 86_400_000;
const NOW = Date.UTC(2026, 10, 24, 17);
const STYLE = { timeZone: 'UTC', hour12: true } as const;
const poly = product('water-based-polyurethane');
const coat = (more: Partial<LaidCoat> = {}): LaidCoat => ({
  id: 'a',
  piece: 'Chair',
  product: 'water-based-polyurethane',
  laidAt: NOW - 3_600_000,
  celsius: 23,
  relativeHumidity: 0.5,
  coatNumber: 1,
  ...more,
});
const faults = (more: Partial<LaidCoat>) =>
  checkCoat(WORDS, poly, coat(more), NOW, STYLE).map(({ field }) => field);

describe('a coat', () => {
  it.each<[string, Partial<LaidCoat>]>([
    ['laid an hour ago', {}],
    ['laid now', { laidAt: NOW }],
    ['laid 179 days ago', { laidAt: NOW - 179 * DAY }],
    ['that is the twentieth', { coatNumber: 20 }],
    ['of the usual film by what was laid', { amount: { milliliters: 90, squareMeters: 1 } }],
    ['on a face as warm as the air', { surfaceCelsius: 23 }],
  ])('%s is timed', (_, more) => {
    expect(faults(more)).toEqual([]);
  });

  it.each<[string, Partial<LaidCoat>, string]>([
    ['laid 181 days ago', { laidAt: NOW - 181 * DAY }, 'laidAt'],
    ['laid tomorrow', { laidAt: NOW + DAY }, 'laidAt'],
    ['laid at no time', { laidAt: Number.NaN }, 'laidAt'],
    ['that is coat 0', { coatNumber: 0 }, 'coatNumber'],
    ['that is coat 21', { coatNumber: 21 }, 'coatNumber'],
    ['that is coat 1.5', { coatNumber: 1.5 }, 'coatNumber'],
    ['in 101 %', { relativeHumidity: 1.01 }, 'relativeHumidity'],
    ['in air below every thermometer', { celsius: -90 }, 'celsius'],
    ['on a face of 90 °C', { surfaceCelsius: 90 }, 'surfaceCelsius'],
    ['of a hundredth of a film', { amount: { milliliters: 0.9, squareMeters: 1 } }, 'amount'],
    ['of thirty films', { amount: { milliliters: 2700, squareMeters: 1 } }, 'amount'],
  ])('%s is stopped', (_, more, field) => {
    expect(faults(more)).toEqual([field]);
  });
});

describe('a time from the can', () => {
  const [soonest, latest] = poly['recoat-hours'].map((hours) => hours * 60) as [number, number];
  const asked = (from: number, to = from) =>
    askAboutLabel(WORDS, poly, { minutes: { recoat: { from, to } } }).map(({ milestone }) => milestone);
  it('is asked about below half of the soonest and beyond twice the latest, and not at these', () => {
    expect(asked(soonest / 2 - 1)).toEqual(['recoat']);
    expect(asked(soonest / 2)).toEqual([]);
    expect(asked(latest * 2)).toEqual([]);
    expect(asked(latest * 2 + 1)).toEqual(['recoat']);
    // A range that reaches into what is usual is not.
    expect(asked(soonest / 4, soonest)).toEqual([]);
    expect(asked(latest, latest * 5)).toEqual([]);
  });
});
