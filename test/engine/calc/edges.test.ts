/**
 * The edges of what is allowed, where one sign decides: a printed limit is itself allowed (ISO 80000-2 writes [a, b] for
 * an interval with its ends, and data sheets mean it so). Conversions by hand, °F = °C × 9/5 + 32.
 */
import { describe, expect, it, test } from 'vitest';
import { nearly, sameClimate, surfaceOf } from '#engine/calc/drying/climate.ts';
import { type History, type Spell, steady } from '#engine/calc/drying/history.ts';
import { drying } from '#engine/calc/drying.ts';
import { outside, type Problem, type Unit } from '#engine/calc/quantity.ts';
import { sayDegrees, sayProblem, sayValue } from '#engine/calc/say-problem.ts';
import { sayWeather, sayWeatherReasons } from '#engine/calc/say-weather.ts';
import { type WeatherReason, weatherVerdict } from '#engine/calc/weather.ts';
import { good } from './good.ts';
import { dryingProduct, PRODUCTS, product } from './products.ts';

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
    for (const part of metric) expect(sayWeather(reason, 'before', 'metric')).toContain(part);
    for (const part of us) expect(sayWeather(reason, 'before', 'us')).toContain(part);
  });

  it('a no is waited out, a maybe is laid thin, and a film that is wet is left alone', () => {
    expect(sayWeather(bound('too-hot', 40, 35), 'before')).toMatch(
      / Wait for better weather or change the room first\.$/,
    );
    expect(sayWeather(bound('too-hot', 30, 27, 'go-with-care'), 'before')).toMatch(
      / Lay it thin and try a small piece first\.$/,
    );
    for (const code of ['too-hot', 'too-humid', 'near-dew-point'])
      expect(sayWeather(bound(code, 0.9, 0.8), 'during')).toMatch(
        /Leave the film alone.*no heat or fan on the film itself\.$/,
      );
    expect(sayWeather({ code: 'in-sun', verdict: 'no' }, 'during')).toMatch(
      /Shade it without touching the film\.$/,
    );
    expect(sayWeather({ code: 'warming-up', verdict: 'no' }, 'during')).toMatch(/Leave the film alone/);
  });

  it('under a no, what would only call for care tells no way of laying it', () => {
    const care = bound('too-hot', 30, 27, 'go-with-care');
    const no = bound('too-humid', 0.9, 0.85);
    const says = (verdict: 'no' | 'go-with-care', moment: 'before' | 'during') =>
      sayWeatherReasons({ verdict, reasons: [care, no] }, moment).map((one) => one.says);
    expect(says('no', 'before')[0]).not.toContain('Lay it thin');
    expect(says('no', 'before')[1]).toContain('Wait for better weather');
    // What both call for is said once, behind the last.
    expect(says('no', 'during').map((one) => one.includes('Leave the film alone'))).toEqual([false, true]);
    expect(sayWeatherReasons({ verdict: 'go-with-care', reasons: [care] }, 'before')[0]?.says).toContain(
      'Lay it thin',
    );
    expect(
      sayWeatherReasons({ verdict: 'no', reasons: [care, no] }, 'before').map(({ reason }) => reason),
    ).toEqual([care, no]);
    expect(sayWeatherReasons({ verdict: 'no', reasons: [no] }, 'before', 'us')[0]?.says).toContain('90 %');
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
      "The label's time to recoat was given as 0 h; a label time must be longer than zero. Read the label again.",
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
      "The label's time to recoat was given as 30 min, but its other times ask for 60 min or more. Read the label again.",
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

describe('the moments of a coat, by a can that prints them', () => {
  const span = (minutes: number) => ({ from: minutes, to: minutes });
  const label = {
    minutes: {
      open: span(10),
      touch: { from: 30, to: 60 },
      recoat: span(120),
      'light-use': span(4320),
      cure: span(43200),
    },
  };
  const AIR = { celsius: 23, relativeHumidity: 0.5 };
  const at = (elapsedMinutes: number, history: History = steady(AIR), relativeThickness = 1) =>
    good(
      drying({
        product: dryingProduct('water-based-polyurethane'),
        label,
        history,
        relativeThickness,
        elapsedMinutes,
      }),
    );

  it.each([
    [0, 'wet'],
    [9.99, 'wet'],
    [10, 'setting'],
    [29.99, 'setting'],
    [30, 'setting'],
    [59.99, 'setting'],
    [60, 'dry-to-touch'],
    [119.99, 'dry-to-touch'],
    [120, 'recoatable'],
    [43199, 'recoatable'],
    [43200, 'cured'],
  ] as const)('%s min: %s', (minutes, stage) => {
    expect(at(minutes).stage).toBe(stage);
  });

  it('is only probable between the early and the late end of the next moment', () => {
    expect(at(5).sureness).toBe('surely');
    expect(at(10).sureness).toBe('surely');
    expect(at(30).sureness).toBe('probably');
  });

  it('tells what is still to come, soonest first, and a moment no more once it is over', () => {
    expect(at(0).next.map(({ milestone }) => milestone)).toEqual([
      'open',
      'touch',
      'recoat',
      ...at(0)
        .next.map(({ milestone }) => milestone)
        .filter((one) => one === 'sand-if-beyond'),
      'light-use',
      'cure',
    ]);
    expect(at(60).next.map(({ milestone }) => milestone)).not.toContain('touch');
    expect(at(59.9).next[0]?.milestone).toBe('touch');
    const late = at(0).next.map(({ range }) => range.to);
    expect(late).toEqual([...late].sort((a, b) => a - b));
  });

  it('gives the can’s times unchanged in its own air, and unchanged where one air is told in many pieces', () => {
    const spells = [1, 9, 20, 0.5, 300].map((minutes): Spell => ({ ...AIR, minutes }));
    const pieces = [...spells, { ...AIR, minutes: 1 }] as unknown as History;
    for (const history of [steady(AIR), pieces])
      for (const [milestone, time] of Object.entries(label.minutes)) {
        const got = at(0, history).times.get(milestone as 'touch');
        expect(got?.from).toBeCloseTo(time.from, 6);
        expect(got?.to).toBeCloseTo(time.to, 6);
      }
  });

  it('says what made a time wide, and nothing else', () => {
    const reasons = (milestone: 'touch' | 'recoat' | 'open', history?: History, thick?: number) =>
      at(0, history, thick).times.get(milestone)?.reasons;
    expect(reasons('recoat')).toEqual([]);
    expect(reasons('touch')).toEqual(['label-range']);
    expect(reasons('recoat', steady(AIR), 1.5)).toEqual(['thick-film']);
    expect(reasons('recoat', steady({ ...AIR, celsius: 15 }))).toEqual(['weather']);
    expect(reasons('recoat', steady({ ...AIR, celsius: 30 }))).toEqual(['label-in-warmth']);
    const bare = good(
      drying({
        product: dryingProduct('water-based-polyurethane'),
        history: steady(AIR),
        relativeThickness: 0.7,
        elapsedMinutes: 0,
      }),
    );
    expect(bare.times.get('recoat')?.reasons).toEqual(['product-varies', 'thin-film']);
  });

  it('is refused for a time before the coat, a film past all measure, and weather that can not be', () => {
    const refused = (more: object) =>
      drying({
        product: dryingProduct('water-based-polyurethane'),
        history: steady(AIR),
        relativeThickness: 1,
        elapsedMinutes: 0,
        ...more,
      }).ok;
    expect(refused({})).toBe(true);
    expect(refused({ elapsedMinutes: -1 })).toBe(false);
    expect(refused({ relativeThickness: 0.1 })).toBe(true);
    expect(refused({ relativeThickness: 0.09 })).toBe(false);
    expect(refused({ relativeThickness: 10 })).toBe(true);
    expect(refused({ relativeThickness: 10.1 })).toBe(false);
    expect(refused({ history: [{ ...AIR, minutes: -1 }] })).toBe(false);
    expect(
      refused({
        history: [
          { ...AIR, minutes: 5 },
          { ...AIR, celsius: 51, minutes: 5 },
        ],
      }),
    ).toBe(false);
    expect(refused({ label: { minutes: {}, climate: { celsius: 51, relativeHumidity: 0.5 } } })).toBe(false);
  });
});

describe('a climate as good as that of the can', () => {
  const base = { celsius: 23, relativeHumidity: 0.5 };
  // 73 °F is 22.8 °C: told in whole degrees it is the 23 °C of the sheet.
  it('takes its warmth, of the air and of the surface, within a quarter of a degree', () => {
    expect(nearly({ celsius: 22.8, relativeHumidity: 0.4 }, base)).toEqual({
      celsius: 23,
      relativeHumidity: 0.4,
    });
    expect(nearly({ celsius: 22.75, relativeHumidity: 0.4 }, base).celsius).toBe(23);
    expect(nearly({ celsius: 22.7, relativeHumidity: 0.4 }, base).celsius).toBe(22.7);
    expect(nearly({ celsius: 23.3, relativeHumidity: 0.4 }, base).celsius).toBe(23.3);
    const cold = { celsius: 10, relativeHumidity: 0.5, surfaceCelsius: 22.9 };
    expect(nearly(cold, base)).toEqual({ celsius: 10, relativeHumidity: 0.5, surfaceCelsius: 23 });
    expect(nearly({ ...cold, surfaceCelsius: 12.1 }, { ...base, surfaceCelsius: 12 }).surfaceCelsius).toBe(
      12,
    );
    expect(nearly({ ...cold, surfaceCelsius: 0 }, base).surfaceCelsius).toBe(0);
    expect(nearly({ celsius: 10, relativeHumidity: 0.5 }, base)).not.toHaveProperty('surfaceCelsius');
  });

  it('is the same where air, humidity and surface are', () => {
    expect(sameClimate(base, { ...base, surfaceCelsius: 23 })).toBe(true);
    expect(sameClimate(base, { ...base, surfaceCelsius: 22 })).toBe(false);
    expect(sameClimate(base, { ...base, celsius: 22, surfaceCelsius: 23 })).toBe(false);
    expect(sameClimate(base, { ...base, relativeHumidity: 0.51 })).toBe(false);
  });
});
