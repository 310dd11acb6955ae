/**
 * The edges of what is allowed, where one sign decides: a printed limit is itself allowed (ISO 80000-2 writes [a, b] for
 * an interval with its ends, and data sheets mean it so). Conversions by hand, °F = °C × 9/5 + 32.
 */
import { describe, expect, it } from 'vitest';
import { surfaceOf } from '#engine/calc/drying/climate.ts';
import { weatherVerdict } from '#engine/calc/weather.ts';
import { good } from './good.ts';
import { PRODUCTS, product } from './products.ts';

const HAIR = 0.001;

describe.each([...PRODUCTS.keys()])('%s', (id) => {
  const { limits, best } = product(id);
  /** Dew and film formation are other reasons and looked at apart. */
  const reasons = (celsius: number, relativeHumidity: number) =>
    good(weatherVerdict(product(id), { celsius, relativeHumidity })).reasons;
  const of = (code: string, celsius: number, relativeHumidity: number) =>
    reasons(celsius, relativeHumidity)
      .filter((reason) => reason.code === code)
      .map((reason) => [reason.verdict, 'limit' in reason && reason.limit]);
  const mild = (best.celsius[0] + best.celsius[1]) / 2;
  const damp = (best.humidity[0] + best.humidity[1]) / 2;

  it('may be laid at its coldest and its warmest, and not beyond', () => {
    const [cold, hot] = limits.celsius;
    if (cold < best.celsius[0])
      expect(of('too-cold', cold, damp)).toEqual([['go-with-care', best.celsius[0]]]);
    expect(of('too-cold', cold - HAIR, damp)).toEqual([['no', cold]]);
    if (hot > best.celsius[1]) expect(of('too-hot', hot, damp)).toEqual([['go-with-care', best.celsius[1]]]);
    expect(of('too-hot', hot + HAIR, damp)).toEqual([['no', hot]]);
  });

  it('is at its best up to the ends of its best warmth', () => {
    const [cold, hot] = best.celsius;
    expect(of('too-cold', cold, damp)).toEqual([]);
    expect(of('too-cold', cold - HAIR, damp)).toHaveLength(1);
    expect(of('too-hot', hot, damp)).toEqual([]);
    expect(of('too-hot', hot + HAIR, damp)).toHaveLength(1);
  });

  it('holds the same of damp and of dry air', () => {
    const [dry, wet] = limits.humidity;
    if (wet > best.humidity[1])
      expect(of('too-humid', mild, wet)).toEqual([['go-with-care', best.humidity[1]]]);
    expect(of('too-humid', mild, wet + HAIR)).toEqual([['no', wet]]);
    expect(of('too-humid', mild, best.humidity[1])).toEqual([]);
    expect(of('too-dry', mild, best.humidity[0])).toEqual([]);
    if (dry > 0) expect(of('too-dry', mild, dry - HAIR)).toEqual([['no', dry]]);
    if (dry < best.humidity[0])
      expect(of('too-dry', mild, dry)).toEqual([['go-with-care', best.humidity[0]]]);
  });
});

describe('a film of droplets, sure to form at 15 °C and surely not below 7 °C', () => {
  const at = (surfaceCelsius: number, relativeHumidity: number) =>
    good(
      weatherVerdict(product('water-based-polyurethane'), { celsius: 20, surfaceCelsius, relativeHumidity }),
    ).reasons.filter(({ code }) => code === 'below-film-formation' || code === 'film-chills');

  it('forms at 15 °C, perhaps below, and at 7 °C still perhaps', () => {
    expect(at(15, 0.5)).toEqual([]);
    expect(at(15 - HAIR, 0.3)).toMatchObject([{ verdict: 'go-with-care', limit: 15 }]);
    expect(at(7, 0.2)).toMatchObject([{ verdict: 'go-with-care', limit: 15, value: 7 }]);
    expect(at(7 - HAIR, 0.2)).toMatchObject([{ verdict: 'no', limit: 7 }]);
  });

  it('does not in air damper than the best where it only may', () => {
    expect(at(14, 0.65)).toMatchObject([{ verdict: 'go-with-care' }]);
    expect(at(14, 0.65 + HAIR)).toMatchObject([{ verdict: 'no', limit: 15 }]);
    expect(at(15, 0.65 + HAIR)).toEqual([]);
  });

  it('may chill below 7 °C where water leaves fast, by the wet bulb (about 6.5 °C in air of 16 °C and 20 %)', () => {
    const [reason] = good(
      weatherVerdict(product('water-based-polyurethane'), { celsius: 16, relativeHumidity: 0.2 }),
    ).reasons.filter(({ code }) => code === 'film-chills');
    expect(reason).toMatchObject({ verdict: 'go-with-care', limit: 7 });
    expect((reason as { value: number }).value).toBeGreaterThan(6);
    expect((reason as { value: number }).value).toBeLessThan(7);
  });
});

describe('a piece colder or warmer than the air', () => {
  const codes = (surfaceCelsius: number) =>
    good(
      weatherVerdict(product('oil-based-polyurethane'), {
        celsius: 22,
        surfaceCelsius,
        relativeHumidity: 0.3,
      }),
    ).reasons.map(({ code }) => code);
  it('is judged by the colder of both for cold and by the warmer for heat', () => {
    expect(codes(12)).toContain('too-cold');
    expect(codes(45)).toContain('too-hot');
    expect(codes(45)).not.toContain('too-cold');
    expect(codes(12)).not.toContain('too-hot');
  });
  it('is as warm as the air where nobody measured it', () => {
    expect(surfaceOf({ celsius: 9, relativeHumidity: 0.5 })).toBe(9);
    expect(surfaceOf({ celsius: 9, surfaceCelsius: 0, relativeHumidity: 0.5 })).toBe(0);
  });
});
