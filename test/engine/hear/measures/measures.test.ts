/**
 * Numbers of the air, reckoned by hand: °C = (°F − 32) × 5/9; a thermometer is read to a degree Fahrenheit (0.6 °C) and a
 * hygrometer to two points. What decades and bare numbers mean is how people talk (common practice, no source). All
 * sentences are our own.
 */
import { describe, expect, it } from 'vitest';
import { SURE } from '#engine/hear.ts';
import { fact, heard } from '../hearing.ts';

const AIR = 'air-celsius';
const DAMP = 'relative-humidity';
const range = (text: string, name: string) => fact(text, name)?.range?.map(Number);
const rests = (text: string, name: string) =>
  fact(text, name)?.rests.map(({ from, to }) => text.slice(from, to));

describe('what went from one figure to another', () => {
  it.each([
    ['humidity went from 80 to 48 % while the varnish dried', DAMP, 0.48],
    ['the humidity went from 80 % to 48 % overnight', DAMP, 0.48],
    ['the shop went from 50 F to 68 F', AIR, 20],
    ['temperature climbed from 50 to 68 degrees', AIR, 20],
    ['it fell from 68 to 50 F in the night', AIR, 10],
  ])('%s: where it ended', (text, name, value) => {
    expect(fact(text, name)?.value).toBe(value);
    expect(fact(text, name)?.sure).toBeGreaterThanOrEqual(SURE);
  });
});

describe('degrees that name their unit', () => {
  it.each<[string, number, number]>([
    ['it was 68 °F', 20, 20],
    ['it was 68°F in there', 20, 20],
    ['it was 68 F when I sprayed', 20, 20],
    ['it was 68 degrees fahrenheit', 20, 20],
    ['it was 68 deg. F', 20, 20],
    ['it was 68º f', 20, 20],
    ['it was 50 f', 10, 10],
    ['it was 20 °C', 20, 20],
    ['it was 20 degrees celsius', 20, 20],
    ['it was 20 centigrade', 20, 20],
    // From 38 on degrees alone would be Fahrenheit; these are not alone.
    ['it was 40 degrees celsius', 40, 40],
    ['it was 40 degrees centigrade', 40, 40],
    ['it was 60-70 F in the garage', 15.56, 21.11],
    ['it was 60 to 70 degrees F', 15.56, 21.11],
    ['between 60 and 70 F', 15.56, 21.11],
    ['70 or 75 F', 21.11, 23.89],
    ['15–18 °C', 15, 18],
    ['it was -5 C', -5, -5],
  ])('%s', (text, low, high) => {
    const got = range(text, AIR);
    expect(got?.[0]).toBeCloseTo(low - 0.6, 1);
    expect(got?.[1]).toBeCloseTo(high + 0.6, 1);
    expect(Number(fact(text, AIR)?.value)).toBeCloseTo((low + high) / 2, 1);
    expect(fact(text, AIR)?.sure).toBeGreaterThan(0.9);
  });

  it('rests on the number with its unit alone', () => {
    expect(fact('it was 40 degrees celsius', AIR)?.against).toEqual([]);
    expect(rests('the shop was at 68 °F all day', AIR)).toEqual(['68 °F']);
    expect(rests('between 60 and 70 F, I think', AIR)).toEqual(['60 and 70 F']);
  });

  it('a letter that begins another word is no unit', () => {
    expect(fact('I used 5 cans and 3 foam brushes', AIR)).toBeUndefined();
  });

  it('nobody coats below −20 or over 50 °C', () => {
    expect(fact('it was 140 F', AIR)).toBeUndefined();
    expect(fact('it was -30 C', AIR)).toBeUndefined();
    expect(fact('it was 120 F', AIR)).toBeDefined();
  });
});

describe('degrees alone', () => {
  it.each<[string, number, number]>([
    // From 38 on they are Fahrenheit.
    ['it was 68 degrees', 20, 20],
    ['it was 68° in there', 20, 20],
    ['it was 60-70 degrees', 15.56, 21.11],
    ['it was 38 degrees', 3.33, 3.33],
    // Below, and from 8 on, Celsius is likelier.
    ['it was 20 degrees', 20, 20],
    ['it was 18 to 20 degrees', 18, 20],
    ['it was 8 degrees', 8, 8],
  ])('%s', (text, low, high) => {
    const got = range(text, AIR);
    expect(got?.[0]).toBeCloseTo(low - 0.6, 1);
    expect(got?.[1]).toBeCloseTo(high + 0.6, 1);
  });

  it('are surer in Fahrenheit than in Celsius, and less sure than with a unit', () => {
    const sure = (text: string) => fact(text, AIR)?.sure ?? 0;
    expect(sure('it was 68 F')).toBeGreaterThan(sure('it was 68 degrees'));
    expect(sure('it was 68 degrees')).toBeGreaterThan(sure('it was 20 degrees'));
  });

  it('say nothing where they are an angle or too few', () => {
    expect(fact('I held the gun at a 45 degree angle', AIR)).toBeUndefined();
    expect(fact('it was 7 degrees off', AIR)).toBeUndefined();
    expect(fact('a 45 degrees angle', AIR)).toBeUndefined();
  });
});

describe('a number without any degree, beside words of the air', () => {
  it.each<[string, number, number]>([
    ['temp was 62 or so', 16.67, 16.67],
    ['the temperature is 75', 23.89, 23.89],
    ['the garage was 55', 12.78, 12.78],
    ['the thermostat is set at 70', 21.11, 21.11],
    ['got down to 45 at night', 7.22, 7.22],
    ['it was 85 outside', 29.44, 29.44],
    ['I keep it at 65', 18.33, 18.33],
    ['in the shop it was 60-65', 15.56, 18.33],
    ['temp was 35', 1.67, 1.67],
    ['temp was 110', 43.33, 43.33],
  ])('%s', (text, low, high) => {
    const got = range(text, AIR);
    expect(got?.[0]).toBeCloseTo(low - 0.6, 1);
    expect(got?.[1]).toBeCloseTo(high + 0.6, 1);
    expect(fact(text, AIR)?.sure).toBeLessThan(0.8);
  });

  it.each([
    'temp was 34',
    'temp was 111',
    'I sanded with 60 grit in the garage',
    'I used 80 paper in the shop',
    'sprayed at 40 psi in the garage',
    'a house from 60 years ago, kept warm',
    'the table cost 90 dollars, kept in the garage',
    'a 48 inch top, in the shop',
    'it has been 72 hours in the garage',
    'I have 40 of them',
    'model 62 in the shop',
    'sanded since age 50. It was cold',
  ])('%s: nothing', (text) => {
    const found = fact(text, AIR);
    // "cold" and the like are heard as words, never as this number.
    for (const one of found?.rests ?? []) expect(text.slice(one.from, one.to)).not.toMatch(/\d/);
  });

  it('the word must stand in the same sentence', () => {
    expect(fact('It was in the garage. I bought 62 of them', AIR)).toBeUndefined();
    expect(fact('I bought 62 of them. The garage is mine', AIR)).toBeUndefined();
  });
});

describe('a decade', () => {
  it.each<[string, number, number]>([
    ['it was in the low 60s', 60, 63],
    ['it was in the mid 60s', 64, 66],
    ['it was in the middle 60s', 64, 66],
    ['it was in the high 60s', 67, 69],
    ['it was in the upper 60s', 67, 69],
    ['it was in the 60s', 60, 69],
    ['temps in the 70’s', 70, 79],
    ['low-50s in my garage', 50, 53],
  ])('%s', (text, low, high) => {
    const got = range(text, AIR);
    expect(got?.[0]).toBeCloseTo(((low - 32) * 5) / 9 - 0.6, 1);
    expect(got?.[1]).toBeCloseTo(((high - 32) * 5) / 9 + 0.6, 1);
  });
});

describe('humidity', () => {
  it.each<[string, number, number]>([
    ['60% humidity', 0.6, 0.6],
    ['60 % RH', 0.6, 0.6],
    ['60 percent relative humidity', 0.6, 0.6],
    ['40-50% humidity', 0.4, 0.5],
    ['40 to 50 percent humidity', 0.4, 0.5],
    ['humidity was 70', 0.7, 0.7],
    ['humidity at 85', 0.85, 0.85],
    ['humidity around 45%', 0.45, 0.45],
    ['RH was 55', 0.55, 0.55],
    ['rh 40', 0.4, 0.4],
    ['15% humidity', 0.15, 0.15],
  ])('%s', (text, low, high) => {
    const got = range(text, DAMP);
    expect(got?.[0]).toBeCloseTo(low - 0.02, 3);
    expect(got?.[1]).toBeCloseTo(high + 0.02, 3);
    expect(fact(text, DAMP)?.sure).toBeCloseTo(0.9, 1);
  });

  it('is never over 100 %, and a number that cannot be one is none', () => {
    expect(range('100% humidity', DAMP)?.[1]).toBe(1);
    expect(fact('14% humidity', DAMP)).toBeUndefined();
    expect(fact('I thinned it with 20% retarder in the garage', DAMP)).toBeUndefined();
    expect(fact('cut it 50% with water', DAMP)).toBeUndefined();
    expect(fact('it came 30% off', DAMP)).toBeUndefined();
  });

  it('a share beside degrees is of the air, one alone is not', () => {
    expect(range('it was 70 °F and 60%', DAMP)?.[0]).toBeCloseTo(0.58, 3);
    expect(fact('about 60% of the top looks fine', DAMP)).toBeUndefined();
  });

  it.each<[string, number, number]>([
    ['humidity in the eighties', 0.8, 0.89],
    ['humidity was in the 70s', 0.7, 0.79],
    ['humidity in the sixties', 0.6, 0.69],
    ['humidity in the seventies', 0.7, 0.79],
    ['humidity in the nineties', 0.9, 0.99],
    ['humidity in the high 40s', 0.4, 0.49],
    ['humidity in the 20s', 0.2, 0.29],
  ])('%s', (text, low, high) => {
    const got = range(text, DAMP);
    expect(got?.[0]).toBeCloseTo(low, 3);
    expect(got?.[1]).toBeCloseTo(high, 3);
  });
});

describe('what a number is of', () => {
  it('a can’s own figure, an iron or a flash point is doubted', () => {
    const sure = (text: string) => fact(text, AIR)?.sure ?? 0;
    const plain = sure('it was 68 F');
    for (const text of [
      'label says 68 F',
      'keep above 68 F',
      'not below 68 F',
      'at least 68 F',
      'minimum 68 F',
      'oven at 68 F',
      'the iron at 68 F',
    ])
      expect(sure(text), text).toBeLessThan(plain * 0.7);
  });

  it('of two that do not agree one speaks against the other, and both are doubted', () => {
    const text = 'it was 68 F by day and 40 F by night';
    const found = fact(text, AIR);
    expect(found?.against.map(({ from, to }) => text.slice(from, to))).toHaveLength(1);
    expect(found?.sure).toBeLessThan(fact('it was 68 F', AIR)?.sure ?? 0);
    expect(fact('it was 68 F, or 20 C', AIR)?.against).toEqual([]);
  });

  it('words alone are wider than any number and less sure', () => {
    const cold = fact('it was freezing in the garage', AIR);
    const [low = 0, high = 0] = cold?.range?.map(Number) ?? [];
    expect(high - low).toBeCloseTo(10, 5);
    expect(cold?.sure).toBeLessThan(0.85);
    const damp = fact('it was very humid', DAMP);
    const [from = 0, to = 0] = damp?.range?.map(Number) ?? [];
    expect(to - from).toBeGreaterThan(0.1);
    expect(to).toBeLessThanOrEqual(1);
    expect(
      heard('it was not humid at all').facts.find((one) => one.fact === DAMP && Number(one.value) > 0.6),
    ).toBeUndefined();
  });
});

it('hears the air where its words are nearly written', () => {
  const text = 'sprayd laquer at 12 degres and humidty 85 and its gone milkey';
  expect(fact(text, 'air-celsius')?.value).toBe(12);
  expect(fact(text, 'relative-humidity')?.value).toBe(0.85);
  expect(fact('12 celcius in the shop, poly is slow', 'air-celsius')?.value).toBe(12);
  expect(fact('the decrease of 12 drawers, poly is slow', 'air-celsius')).toBeUndefined();
});
