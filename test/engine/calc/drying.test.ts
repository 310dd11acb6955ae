import { describe, expect, test } from 'vitest';
import { dryingOf } from '#engine/calc/drying/figures.ts';
import { steady } from '#engine/calc/drying/history.ts';
import type { Label } from '#engine/calc/drying/label.ts';
import { drying } from '#engine/calc/drying.ts';
import { toCelsius } from '#engine/calc/units.ts';
import { good, refusal } from './good.ts';
import { dryingProduct, product } from './products.ts';

const ROOM = { celsius: 23, relativeHumidity: 0.5 };
const at = (
  id: string,
  elapsedMinutes: number,
  weather: Parameters<typeof steady>[0] = ROOM,
  label?: Label,
) =>
  drying({
    product: dryingProduct(id),
    history: steady(weather),
    relativeThickness: 1,
    elapsedMinutes,
    ...(label && { label }),
  });

describe('the stage now', () => {
  test.each([
    [0, 'wet', 'surely'],
    [3, 'wet', 'probably'],
    [10, 'setting', 'surely'],
    [30, 'setting', 'probably'],
    [44, 'setting', 'probably'],
    [120, 'dry-to-touch', 'probably'],
    [300, 'recoatable', 'surely'],
    [25 * 1440, 'recoatable', 'probably'],
    [31 * 1440, 'cured', 'surely'],
  ] as const)('water-based polyurethane after %d min: %s, %s', (elapsed, stage, sureness) => {
    expect(good(at('water-based-polyurethane', elapsed))).toMatchObject({ stage, sureness });
  });

  test('a range says what widened it', () => {
    const { times } = good(at('water-based-polyurethane', 0, { celsius: 16, relativeHumidity: 0.6 }));
    expect(times.get('touch')?.reasons).toEqual(['product-varies', 'weather']);
    const thick = good(
      drying({
        product: dryingProduct('shellac'),
        history: steady(ROOM),
        relativeThickness: 2,
        elapsedMinutes: 0,
      }),
    );
    expect(thick.times.get('touch')?.reasons).toEqual(['product-varies', 'thick-film']);
  });

  test('a fast can: second coat after an hour — common practice, no source', () => {
    const label = { minutes: { recoat: { from: 60, to: 60 } } };
    expect(good(at('water-based-polyurethane', 61, ROOM, label)).stage).toBe('recoatable');
    expect(good(at('water-based-polyurethane', 59, ROOM, label)).times.get('touch')?.to).toBeLessThanOrEqual(
      60,
    );
  });

  test('printed: recoat after 2 to 4 hours, and after 8 to 10 where it is cool or damp', () => {
    const cool = good(at('water-based-polyurethane', 0, { celsius: 15, relativeHumidity: 0.75 })).times.get(
      'recoat',
    );
    expect(cool?.from).toBeLessThan(10 * 60);
    expect(cool?.to).toBeGreaterThan(8 * 60);
  });
});

describe('a cold night', () => {
  const night = [
    { celsius: 20, relativeHumidity: 0.5, minutes: 600 },
    { celsius: 4, relativeHumidity: 0.8, minutes: 600 },
    { celsius: 20, relativeHumidity: 0.5, minutes: 600 },
  ] as const;

  test('after the film has set it only costs time', () => {
    const cold = good(
      drying({
        product: dryingProduct('water-based-polyurethane'),
        history: night,
        relativeThickness: 1,
        elapsedMinutes: 0,
      }),
    ).times.get('cure');
    const warm = good(at('water-based-polyurethane', 0, { celsius: 20, relativeHumidity: 0.5 })).times.get(
      'cure',
    );
    expect((cold?.to ?? 0) - (warm?.to ?? 0)).toBeCloseTo(600, 6);
    expect(cold?.from).toBeGreaterThan(warm?.from ?? Number.NaN);
    expect(cold?.reasons).toContain('cold-spells');
  });

  test('an oil-based film that is dry to touch only loses the night', () => {
    const [day, cold] = night;
    const product = dryingProduct('oil-based-polyurethane');
    const history = [{ ...day, minutes: 700 }, cold, day] as const;
    const slept = good(drying({ product, history, relativeThickness: 1, elapsedMinutes: 0 })).times.get(
      'recoat',
    );
    const awake = good(at('oil-based-polyurethane', 0, { celsius: 20, relativeHumidity: 0.5 })).times.get(
      'recoat',
    );
    expect((slept?.to ?? 0) - (awake?.to ?? 0)).toBeCloseTo(600, 6);
    const dewy = [{ ...day, minutes: 700 }, { ...cold, surfaceCelsius: 0 }, day] as const;
    expect(refusal(drying({ product, history: dewy, relativeThickness: 1, elapsedMinutes: 0 }))).toContain(
      'water condenses',
    );
  });

  test('before that no time is promised', () => {
    const [day, cold] = night;
    const history = [{ ...day, minutes: 200 }, cold, day] as const;
    expect(
      refusal(
        drying({
          product: dryingProduct('oil-based-polyurethane'),
          history,
          relativeThickness: 1,
          elapsedMinutes: 0,
        }),
      ),
    ).toBe(
      'The air temperature is 4 °C (39 °F); this product needs it between 13 °C (55 °F) and 32 °C (90 °F). No drying time can be promised.',
    );
  });

  test('a place that stays cold never cures', () => {
    const forever = [night[0], { ...night[1], minutes: 0 }] as const;
    expect(
      refusal(
        drying({
          product: dryingProduct('water-based-polyurethane'),
          history: forever,
          relativeThickness: 1,
          elapsedMinutes: 0,
        }),
      ),
    ).toContain('No drying time can be promised.');
  });
});

describe('bad input gets a clear answer', () => {
  test('140 °F', () => {
    expect(refusal(at('shellac', 0, { celsius: toCelsius(140), relativeHumidity: 0.5 }))).toBe(
      'The air temperature was given as 60 °C (140 °F); it must be between -30 °C (-22 °F) and 50 °C (122 °F). Check the number and its unit.',
    );
  });

  test('130 % humidity', () => {
    expect(refusal(at('shellac', 0, { celsius: 20, relativeHumidity: 1.3 }))).toBe(
      'The relative humidity was given as 130 %; it must be between 0 % and 100 %. Check the number and its unit.',
    );
  });

  test('recoat after 0 h', () => {
    expect(refusal(at('shellac', 0, ROOM, { minutes: { recoat: { from: 0, to: 0 } } }))).toBe(
      'The label’s time to recoat was given as 0 h; a label time must be longer than zero. Read the label again.',
    );
  });

  test('label times in the wrong order, or backwards', () => {
    const label = { minutes: { touch: { from: 300, to: 300 }, recoat: { from: 120, to: 120 } } };
    expect(refusal(at('shellac', 0, ROOM, label))).toBe(
      'The label’s time to recoat was given as 2 h, but its other times ask for 5 h or more. Read the label again.',
    );
    expect(refusal(at('shellac', 0, ROOM, { minutes: { cure: { from: 9000, to: 60 } } }))).toContain(
      '6.25 days or more',
    );
  });

  test('a surface colder than the dew point', () => {
    expect(
      refusal(at('water-based-polyurethane', 0, { celsius: 22, relativeHumidity: 0.7, surfaceCelsius: 14 })),
    ).toBe(
      'The surface is 14 °C (57 °F), colder than the dew point of 16 °C (61 °F): water condenses on it. No drying time can be promised.',
    );
  });

  test('colder than the film can form', () => {
    expect(refusal(at('water-based-polyurethane', 0, { celsius: 5, relativeHumidity: 0.5 }))).toBe(
      'The surface is 5 °C (41 °F), below the 7 °C (45 °F) that this film needs to knit together. No drying time can be promised.',
    );
  });

  test('outside the limits of the product or, where it gives them, of the can', () => {
    const damp = { celsius: 20, relativeHumidity: 0.9 };
    expect(refusal(at('water-based-polyurethane', 0, damp))).toContain('relative humidity is 90 %');
    const label = { minutes: {}, limits: { relativeHumidity: { from: 0, to: 0.95 } } };
    expect(at('water-based-polyurethane', 0, damp, label).ok).toBe(true);
    const cool = { celsius: 6, relativeHumidity: 0.5 };
    const hardy = { minutes: {}, limits: { celsius: { from: 5, to: 35 } } };
    expect(at('water-based-polyurethane', 0, cool).ok).toBe(false);
    expect(at('water-based-polyurethane', 0, cool, hardy).ok).toBe(true);
  });

  test('a film of no thickness, time before the coat, a spell of negative length', () => {
    const coat = {
      product: dryingProduct('shellac'),
      history: steady(ROOM),
      relativeThickness: 1,
      elapsedMinutes: 0,
    };
    expect(refusal(drying({ ...coat, relativeThickness: 0 }))).toContain('film thickness against the usual');
    expect(refusal(drying({ ...coat, elapsedMinutes: -5 }))).toContain('time since the coat was laid');
    expect(refusal(drying({ ...coat, history: [{ ...ROOM, minutes: -1 }] }))).toContain('length of a spell');
  });
});

test('a product in its own units becomes minutes', () => {
  const { figures } = dryingOf(product('shellac'));
  expect(figures.recoat).toEqual({ from: 60, to: 120 });
  expect(figures.cure).toEqual({ from: 7 * 1440, to: 28 * 1440 });
  expect(figures['sand-if-beyond']).toBeUndefined();
});
