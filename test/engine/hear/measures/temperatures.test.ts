/**
 * Degrees of a text, reckoned by the two scales: 32 °F is 0 °C, 212 °F is 100 °C. Sentences of our own.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { temperatures } from '#engine/hear/measures/temperatures.ts';

const air = (text: string) => temperatures(text).air;

const surface = (text: string) => temperatures(text).surface;

const holds = (readings: readonly { low: number; high: number }[], value: number) =>
  readings.some(({ low, high }) => low <= value && value <= high && high - low < 10);

describe('degrees', () => {
  it('of both scales are told in Celsius, by the freezing and the boiling of water', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 110 }), (fahrenheit) => {
        const value = (100 * (fahrenheit - 32)) / (212 - 32);
        for (const unit of [
          ' F',
          '°F',
          ' °F',
          ' degrees F',
          ' deg. F',
          ' fahrenheit',
          ' degrees fahrenheit',
          'f',
        ])
          expect(holds(air(`the shop, ${fahrenheit}${unit}, today`), value), unit).toBe(true);
      }),
      { numRuns: 25 },
    );
    fc.assert(
      fc.property(fc.integer({ min: -10, max: 45 }), (celsius) => {
        for (const unit of [' C', '°C', ' º C', ' degrees C', ' celsius', ' centigrade', 'c'])
          expect(holds(air(`the shop, ${celsius}${unit}, today`), celsius), unit).toBe(true);
      }),
      { numRuns: 25 },
    );
  });
  it('from one to another hold both, whichever stands first', () => {
    for (const text of ['60-70 F', '60 to 70 F', '60 or 70 °F', '60 and 70 F', '60–70 F', '70 to 60 F']) {
      const [found] = air(`it is ${text} here`);
      expect(found?.low).toBeLessThan(15.6);
      expect(found?.low).toBeGreaterThan(14.5);
      expect(found?.high).toBeGreaterThan(21.1);
      expect(found?.high).toBeLessThan(22.2);
    }
  });
  it('without a scale are Fahrenheit from 38 on, and below that in doubt', () => {
    expect(holds(air('it is 50 degrees'), 10)).toBe(true);
    expect(holds(air('it is 38 degrees'), 3.3)).toBe(true);
    expect(air('it is 50 degrees')[0]?.sure).toBeGreaterThanOrEqual(0.7);
    for (const value of [8, 20, 37]) {
      const [found] = air(`it is ${value} degrees`);
      expect(holds([found ?? { low: 0, high: 99 }], value)).toBe(true);
      expect(found?.sure).toBeLessThan(0.7);
    }
  });
  it('without a scale and below 8 are air too cold for a coat in either, where words of the air stand beside them', () => {
    for (const text of ['it is 6 degrees in my shop', 'the garage is at 5 degrees', '-3 degrees outside'])
      expect(air(text)[0]?.high ?? 99).toBeLessThan(7);
    for (const text of [
      'tip it 5 degrees',
      'the garage got 3 degrees colder',
      'a gap of 2 degrees',
      'it is 7 degrees',
    ])
      expect(air(text)).toEqual([]);
  });
  it.each([
    'mitered at 45 degrees',
    'beveled to 45 degrees',
    'cut 45 degrees',
    'turned it 90 degrees',
    'at an angle of 45 degrees',
    'tilted 60 degrees',
    'a box that holds 100 degrees',
  ])('%s: an angle, or another place', (text) => {
    expect(air(text)).toEqual([]);
  });
  it.each(['180 F', '300 degrees F', '-30 C', '61 C'])('%s is no air and no film', (text) => {
    expect(temperatures(`it was ${text}`)).toEqual({ air: [], surface: [] });
  });
  it('alone are heard beside words of the air', () => {
    for (const text of [
      'temp 68',
      'the shop was 68',
      'it is 68 outside',
      'thermostat at 68',
      'about 68 in here',
      'kept it at 68',
      'got down to 68',
      'it was 68 at night',
      '68 and raining',
      'when I brushed it was 68',
    ])
      expect(holds(air(text), 20), text).toBe(true);
    for (const text of [
      '68 of them',
      'sanded with 68',
      'grit 68, temp',
      '68 grit in the shop',
      'temp: 68 hours',
      'temp 168',
      'temp 30',
      'psi 68 in the shop',
      'he is 68 years and cold',
      'humidity is 68 in here',
      'room, $68',
    ])
      expect(air(text), text).toEqual([]);
  });
  it('in tens hold their part of the ten', () => {
    for (const [part, from, to] of [
      ['low', 60, 63],
      ['mid', 64, 66],
      ['middle', 64, 66],
      ['high', 67, 69],
      ['upper', 67, 69],
    ] as const) {
      const [found] = air(`in the ${part} 60s`);
      for (const value of [from, to])
        expect(holds([found ?? { low: 0, high: 99 }], ((value - 32) * 5) / 9)).toBe(true);
      expect(holds([found ?? { low: 0, high: 99 }], ((from - 2 - 32) * 5) / 9)).toBe(false);
      expect(holds([found ?? { low: 0, high: 99 }], ((to + 2 - 32) * 5) / 9)).toBe(false);
    }
    for (const value of [60, 69]) expect(holds(air('it is in the 60s'), ((value - 32) * 5) / 9)).toBe(true);
    expect(air('he built it in the 60s')).toEqual([]);
    expect(air('they were painted back in the 60s')).toEqual([]);
  });
  it('of a surface are told apart from the air', () => {
    for (const text of [
      'the wood reads 52 F',
      'the panel itself read 52 F',
      'my laser says 52 F',
      'infrared shows 52 F',
      'ir gun 52 F',
      '52 F on the surface',
      'the top measured 52 F',
    ]) {
      expect(holds(surface(text), 11.1), text).toBe(true);
      expect(air(text), text).toEqual([]);
    }
    for (const text of [
      'the floor surface, 52 F',
      'the room air surface 52 F',
      'the concrete slab was 52 F',
      'it reads 52 F',
    ])
      expect(surface(text), text).toEqual([]);
    const both = temperatures('the wood reads 52 F, the air is 68 F');
    expect(holds(both.surface, 11.1) && holds(both.air, 20)).toBe(true);
  });
});
