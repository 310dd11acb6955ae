/**
 * Each reason and each refusal says what came, what may come, and what to do, in both units. Conversions by hand,
 * °F = °C × 9/5 + 32.
 */
import { describe, expect, it, test } from 'vitest';
import { outside, type Problem, type Unit } from '#engine/calc/quantity.ts';
import { sayDegrees, sayProblem, sayValue } from '#engine/calc/say-problem.ts';
import { besideProblem, sayWeather, sayWeatherReasons } from '#engine/calc/say-weather.ts';
import type { WeatherReason } from '#engine/calc/weather.ts';
import { WORDS } from '../clock/words.ts';

describe('each reason says its figures in both units, the chosen one first, and what to do', () => {
  const bound = (code: string, value: number, limit: number, verdict: 'no' | 'go-with-care' = 'no') =>
    ({ code, verdict, value, limit }) as WeatherReason;
  test.each<[WeatherReason, readonly string[], readonly string[]]>([
    [
      bound('near-dew-point', 1, 3),
      ['1 °C (1.8 °F) above', '3 °C (5.4 °F)'],
      ['1.8 °F (1 °C) above', '5.4 °F (3 °C)'],
    ],
    [bound('near-dew-point', -2, 3), ['2 °C (3.6 °F) below'], ['3.6 °F (2 °C) below']],
    [bound('near-dew-point', 0, 3), ['condensing'], ['condensing']],
    [bound('solvent-gap', 8, 10), ['8 °C (14.4 °F)', '10 °C (18 °F)'], ['14.4 °F (8 °C)', '18 °F (10 °C)']],
    [
      bound('too-cold', 5, 10),
      ['5 °C (41 °F)', '10 °C (50 °F) or more'],
      ['41 °F (5 °C)', '50 °F (10 °C) or more'],
    ],
    [
      bound('too-hot', 40, 35),
      ['40 °C (104 °F)', '35 °C (95 °F) or less'],
      ['104 °F (40 °C)', '95 °F (35 °C) or less'],
    ],
    [bound('too-humid', 0.9, 0.85), ['90 %', '85 % or less'], ['90 %', '85 % or less']],
    [bound('too-dry', 0.05, 0.1), ['5 %', '10 % or more'], ['5 %', '10 % or more']],
    [
      bound('below-film-formation', 6, 7),
      ['6 °C (43 °F)', 'below 7 °C (45 °F)'],
      ['43 °F (6 °C)', '45 °F (7 °C)'],
    ],
    [bound('film-chills', 6, 7), ['6 °C (43 °F)', '7 °C (45 °F)'], ['43 °F (6 °C)', '45 °F (7 °C)']],
    [{ code: 'warming-up', verdict: 'no' }, ['pores', 'no longer changing'], ['pores']],
    [{ code: 'in-sun', verdict: 'no' }, ['sun', 'Move it to the shade'], ['sun']],
  ])('%o', (reason, metric, us) => {
    for (const part of metric) expect(sayWeather(WORDS, reason, 'before', 'metric')).toContain(part);
    for (const part of us) expect(sayWeather(WORDS, reason, 'before', 'us')).toContain(part);
  });

  it('a no is waited out, a maybe is laid thin, and a film that is wet is left alone', () => {
    expect(sayWeather(WORDS, bound('too-hot', 40, 35), 'before')).toMatch(
      / Wait for better weather or change the room first\.$/,
    );
    expect(sayWeather(WORDS, bound('too-hot', 30, 27, 'go-with-care'), 'before')).toMatch(
      / Lay it thin and try a small piece first\.$/,
    );
    for (const code of ['too-hot', 'too-humid', 'near-dew-point'])
      expect(sayWeather(WORDS, bound(code, 0.9, 0.8), 'during')).toMatch(
        /Leave the film alone.*no heat or fan on the film itself\.$/,
      );
    expect(sayWeather(WORDS, { code: 'in-sun', verdict: 'no' }, 'during')).toMatch(
      /Shade it without touching the film\.$/,
    );
    expect(sayWeather(WORDS, { code: 'warming-up', verdict: 'no' }, 'during')).toMatch(
      /Leave the film alone/,
    );
  });

  it('under a no, what would only call for care tells no way of laying it', () => {
    const care = bound('too-hot', 30, 27, 'go-with-care');
    const no = bound('too-humid', 0.9, 0.85);
    const says = (verdict: 'no' | 'go-with-care', moment: 'before' | 'during') =>
      sayWeatherReasons(WORDS, { verdict, reasons: [care, no] }, moment).map((one) => one.says);
    expect(says('no', 'before')[0]).not.toContain('Lay it thin');
    expect(says('no', 'before')[1]).toContain('Wait for better weather');
    // What both call for is said once, behind the last.
    expect(says('no', 'during').map((one) => one.includes('Leave the film alone'))).toEqual([false, true]);
    expect(
      sayWeatherReasons(WORDS, { verdict: 'go-with-care', reasons: [care] }, 'before')[0]?.says,
    ).toContain('Lay it thin');
    expect(
      sayWeatherReasons(WORDS, { verdict: 'no', reasons: [care, no] }, 'before').map(({ reason }) => reason),
    ).toEqual([care, no]);
    expect(sayWeatherReasons(WORDS, { verdict: 'no', reasons: [no] }, 'before', 'us')[0]?.says).toContain(
      '90 %',
    );
  });
});

describe('a figure as a person reads it', () => {
  it.each<[number | string, Unit, string]>([
    [0, 'min', '0 h'],
    [1, 'min', '1 min'],
    [119, 'min', '119 min'],
    [120, 'min', '2 h'],
    [2879, 'min', '47.98 h'],
    [2880, 'min', '2 days'],
    [4320, 'min', '3 days'],
    [0.505, '0–1', '50.5 %'],
    [20, '°C', '20 °C (68 °F)'],
    [-40, '°C', '-40 °C (-40 °F)'],
    [-0.2, '°C', '0 °C (32 °F)'],
    [12.345, 'µm', '12.35 µm'],
    [3, '', '3'],
    ['high', 'µm', '"high"'],
  ])('%s in %s is %s', (value, unit, wanted) => {
    expect(sayValue(value, unit)).toBe(wanted);
  });

  it('takes a decimal only where it would else read like the other', () => {
    expect(sayDegrees(17.8, 'metric', 18)).toBe('17.8 °C (64 °F)');
    expect(sayDegrees(18, 'metric', 18)).toBe('18 °C (64 °F)');
    expect(sayDegrees(17, 'metric', 18)).toBe('17 °C (63 °F)');
    expect(sayDegrees(18)).toBe('18 °C (64 °F)');
    expect(sayDegrees(18, 'us')).toBe('64 °F (18 °C)');
  });
});

describe('a refusal says what came, what may come, and what to do', () => {
  const problem = (more: Partial<Problem>): Problem => ({
    code: 'out-of-range',
    quantity: 'air temperature',
    unit: '°C',
    value: 60,
    min: -30,
    max: 50,
    ...more,
  });
  it.each<[Partial<Problem>, string]>([
    [
      {},
      'The air temperature was given as 60 °C (140 °F); it must be between -30 °C (-22 °F) and 50 °C (122 °F). Check the number and its unit.',
    ],
    [
      { quantity: 'time', unit: 'min', value: 0, min: 5, max: Number.POSITIVE_INFINITY },
      'The time was given as 0 h; it must be 5 min or more. Check the number and its unit.',
    ],
    [
      { code: 'outside-product-limits', value: 5, min: 10, max: 35 },
      'The air temperature is 5 °C (41 °F); this product needs it between 10 °C (50 °F) and 35 °C (95 °F). No drying time can be promised.',
    ],
    [
      { code: 'surface-below-dew-point', value: 10, min: 12 },
      'The surface is 10 °C (50 °F), colder than the dew point of 12 °C (54 °F): water condenses on it. No drying time can be promised.',
    ],
    [
      { code: 'below-film-formation', value: 5, min: 7 },
      'The surface is 5 °C (41 °F), below the 7 °C (45 °F) that this film needs to knit together. No drying time can be promised.',
    ],
    [
      { code: 'label-not-positive', quantity: 'time to recoat', unit: 'min', value: 0, min: 0 },
      'The label’s time to recoat was given as 0 h; a label time must be longer than zero. Read the label again.',
    ],
    [
      {
        code: 'label-out-of-order',
        quantity: 'time to recoat',
        unit: 'min',
        value: 30,
        min: 60,
        max: Number.POSITIVE_INFINITY,
      },
      'The label’s time to recoat was given as 30 min, but its other times ask for 60 min or more. Read the label again.',
    ],
    [
      { code: 'unknown-value', quantity: 'grit', unit: '', value: 'P130' },
      'The grit was given as "P130", which is not one that this calculator knows.',
    ],
  ])('%o', (more, wanted) => {
    expect(sayProblem(problem(more))).toBe(wanted);
  });

  it('refuses the first value that is outside, with its range; both ends are inside', () => {
    expect(outside(['a', 0, 0, 1, ''], ['b', 1, 0, 1, ''])).toBeUndefined();
    expect(outside(['a', 0, 0, 1, ''], ['b', 1.1, 0, 1, 'mm'], ['c', 9, 0, 1, ''])).toEqual({
      ok: false,
      problem: { code: 'out-of-range', quantity: 'b', unit: 'mm', value: 1.1, min: 0, max: 1 },
    });
    expect(outside(['a', -0.1, 0, 1, ''])).toBeDefined();
    expect(outside(['a', Number.NaN, 0, 1, ''])).toBeDefined();
    expect(outside()).toBeUndefined();
  });
});

// One fact is told once: what the problem itself says is left out of what stands beside it.
it.each([
  [{ code: 'outside-product-limits', quantity: 'air temperature' }, ['too-cold', 'too-hot']],
  [{ code: 'outside-product-limits', quantity: 'surface temperature' }, ['too-cold', 'too-hot']],
  [{ code: 'outside-product-limits', quantity: 'relative humidity' }, ['too-humid', 'too-dry']],
  [{ code: 'surface-below-dew-point', quantity: 'surface temperature' }, ['near-dew-point']],
  [{ code: 'below-film-formation', quantity: 'film temperature' }, ['below-film-formation']],
  [{ code: 'label-not-positive', quantity: 'dry to touch' }, []],
  [undefined, []],
] as const)('beside %j no %j', (problem, left) => {
  const codes = [
    'too-cold',
    'too-hot',
    'too-humid',
    'too-dry',
    'near-dew-point',
    'below-film-formation',
    'solvent-gap',
    'film-chills',
  ] as const;
  const reasons = codes.map((code) => ({ code, verdict: 'no' as const, value: 1, limit: 2 }));
  expect(besideProblem(reasons, problem).map(({ code }) => code)).toEqual(
    codes.filter((code) => !left.some((one) => one === code)),
  );
});
