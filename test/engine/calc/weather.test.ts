import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dewPoint } from '#engine/calc/dew-point.ts';
import { sayWeather } from '#engine/calc/say-weather.ts';
import { VERDICTS, type Weather, weatherVerdict } from '#engine/calc/weather.ts';
import { WORDS } from '../clock/words.ts';
import { good, refusal } from './good.ts';
import { PRODUCTS, product } from './products.ts';

const judge = (id: string, weather: Weather) => good(weatherVerdict(product(id), weather));
const codes = (id: string, weather: Weather) => judge(id, weather).reasons.map(({ code }) => code);
const FINE: Weather = { celsius: 21, relativeHumidity: 0.45 };

test.each([...PRODUCTS.keys()])('21 °C and 45 %% suit %s, or nearly', (id) => {
  const { verdict } = judge(id, FINE);
  // At 45 % the air is less than 13 °C above its dew point, which still is enough for fast solvents.
  expect(verdict).toBe('go');
});

describe('water-based', () => {
  const id = 'water-based-polyurethane';

  test('the coldest surface decides, not the air', () => {
    expect(judge(id, { celsius: 22, relativeHumidity: 0.6, surfaceCelsius: 16 })).toMatchObject({
      verdict: 'no',
      marginCelsius: expect.closeTo(2.1, 1),
    });
    expect(codes(id, { celsius: 22, relativeHumidity: 0.6, surfaceCelsius: 16 })).toContain('near-dew-point');
  });

  test.each([
    [{ celsius: 9, relativeHumidity: 0.5 }, 'no', 'too-cold'],
    [{ celsius: 16, relativeHumidity: 0.5 }, 'go-with-care', 'too-cold'],
    [{ celsius: 12, relativeHumidity: 0.5 }, 'go-with-care', 'below-film-formation'],
    [{ celsius: 5, relativeHumidity: 0.5 }, 'no', 'below-film-formation'],
    // 52 °F and 80 %: cold and damp at once.
    [{ celsius: 11.1, relativeHumidity: 0.8 }, 'no', 'below-film-formation'],
    [{ celsius: 16, relativeHumidity: 0.2 }, 'go-with-care', 'film-chills'],
    [{ celsius: 30, relativeHumidity: 0.5 }, 'go-with-care', 'too-hot'],
    [{ celsius: 36, relativeHumidity: 0.5 }, 'no', 'too-hot'],
    [{ celsius: 21, relativeHumidity: 0.75 }, 'go-with-care', 'too-humid'],
    [{ celsius: 21, relativeHumidity: 0.9 }, 'no', 'too-humid'],
    [{ celsius: 21, relativeHumidity: 0.15 }, 'go-with-care', 'too-dry'],
    [{ celsius: 21, relativeHumidity: 0.05 }, 'no', 'too-dry'],
    [{ ...FINE, warmingUp: true }, 'no', 'warming-up'],
    [{ ...FINE, inSun: true }, 'no', 'in-sun'],
  ] as const)('%o: %s, %s', (weather, verdict, code) => {
    expect(judge(id, weather).verdict).toBe(verdict);
    expect(codes(id, weather)).toContain(code);
  });
});

describe('fast solvents: gap 10 °C go, 7 to 10 with care, below 7 no (a working rule, no single source)', () => {
  /** Gaps by the Magnus formula from the trade evidence: 20 °C at 49 % is 11 °C, at 52 % 10.1 °C, at 65 % 6.8 °C. */
  test.each([
    [0.48, undefined],
    [0.52, undefined],
    [0.54, 'go-with-care'],
    [0.6, 'go-with-care'],
    [0.65, 'no'],
  ] as const)('20 °C and %d', (relativeHumidity, verdict) => {
    for (const id of ['shellac', 'brushing-lacquer', 'sprayed-lacquer', 'aerosol-lacquer']) {
      const reason = judge(id, { celsius: 20, relativeHumidity }).reasons.find(
        ({ code }) => code === 'solvent-gap',
      );
      expect(reason?.verdict).toBe(verdict);
    }
    expect(codes('water-based-lacquer', { celsius: 20, relativeHumidity })).not.toContain('solvent-gap');
    expect(codes('oil-based-polyurethane', { celsius: 20, relativeHumidity })).not.toContain('solvent-gap');
  });

  test('12 °C, rain, 85 %: no (gap 2.4 °C)', () => {
    const { verdict, reasons } = judge('aerosol-lacquer', { celsius: 12, relativeHumidity: 0.85 });
    expect(verdict).toBe('no');
    expect(reasons.find(({ code }) => code === 'solvent-gap')).toMatchObject({
      value: expect.closeTo(2.4, 1),
    });
  });
});

test('each reason is one short answer in words', () => {
  const cold = judge('shellac', { celsius: 20, relativeHumidity: 0.62 });
  expect(cold.reasons.map((reason) => sayWeather(WORDS, reason, 'before'))).toEqual([
    'Fast solvents chill the film, and the air is only 7.5 °C (13.5 °F) above the dew point; 10 °C (18 °F) is wanted, or it may turn white. Lay it thin and try a small piece first.',
    'The air is at 62 % humidity; this coat wants 50 % or less. Lay it thin and try a small piece first.',
  ]);
  const wet = judge('oil-based-polyurethane', {
    celsius: 25,
    relativeHumidity: 0.8,
    surfaceCelsius: 15,
    inSun: true,
  });
  expect(wet.reasons.map((reason) => sayWeather(WORDS, reason, 'during'))).toEqual([
    'The coldest surface is 6.3 °C (11.4 °F) below the dew point: water is condensing on it. Leave the film alone and change the room, slowly: no heat or fan on the film itself.',
    'It is 15 °C (59 °F); this coat wants 18 °C (64 °F) or more. Leave the film alone and change the room, slowly: no heat or fan on the film itself.',
    'The air is at 80 % humidity; this coat wants 70 % or less. Leave the film alone and change the room, slowly: no heat or fan on the film itself.',
    'The sun is on the piece: the skin dries first and bubbles rise under it. Shade it without touching the film.',
  ]);
});

test('for every product and weather: the worst reason decides, and every reason has words with its figures', () => {
  const weather = fc.record({
    celsius: fc.double({ min: -10, max: 45, noNaN: true }),
    relativeHumidity: fc.double({ min: 0.02, max: 1, noNaN: true }),
    warmingUp: fc.boolean(),
    inSun: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.constantFrom(...PRODUCTS.keys()), weather, (id, air) => {
      const { verdict, reasons, dewPointCelsius } = judge(id, air);
      const worst = Math.max(0, ...reasons.map((reason) => VERDICTS.indexOf(reason.verdict)));
      expect(VERDICTS.indexOf(verdict)).toBe(worst);
      expect(dewPointCelsius).toBeCloseTo(good(dewPoint(air)), 6);
      for (const reason of reasons)
        for (const moment of ['before', 'during'] as const)
          expect(sayWeather(WORDS, reason, moment)).not.toMatch(/NaN|undefined|Infinity/);
    }),
  );
});

test('140 °F and 130 % are refused', () => {
  expect(refusal(weatherVerdict(product('shellac'), { celsius: 60, relativeHumidity: 0.5 }))).toContain(
    '60 °C (140 °F)',
  );
  expect(refusal(weatherVerdict(product('shellac'), { celsius: 20, relativeHumidity: 1.3 }))).toContain(
    '130 %',
  );
});
