import psychrolib from 'psychrolib';
import { describe, expect, test } from 'vitest';
import { dewPoint } from '#engine/calc/dew-point.ts';
import { humidityRatio } from '#engine/calc/humidity-ratio.ts';
import { saturationPressure } from '#engine/calc/saturation-pressure.ts';
import { toCelsius, toFahrenheit } from '#engine/calc/units.ts';
import { vaporPressureDeficit } from '#engine/calc/vapor-pressure-deficit.ts';
import { wetBulb } from '#engine/calc/wet-bulb.ts';
import { good, refusal, relativeError } from './good.ts';
import json from './psychrometrics.table.json' with { type: 'json' };
import { readTable } from './table.ts';

const table = readTable(json);
const PRESSURE = 101_325;
psychrolib.SetUnitSystem(psychrolib.SI);

type Grid = {
  t_c: number;
  rh_pct: number;
  p_ws_pa: number;
  vpd_pa: number;
  t_dew_c: number;
  t_wb_c: number;
  w_g_per_kg: number;
  flag?: string;
};
const grid = table.rows<Grid>('grid');
const airOf = ({ t_c, rh_pct }: Grid) => ({ celsius: t_c, relativeHumidity: rh_pct / 100 });

/** Air with a dry and a wet bulb: humidity found by halving on our own wet bulb. */
const airWithBulb = (celsius: number, bulb: number) => {
  let [low, high] = [0.001, 1];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (good(wetBulb({ celsius, relativeHumidity: middle })) < bulb) low = middle;
    else high = middle;
  }
  return { celsius, relativeHumidity: low };
};

describe('saturation pressure', () => {
  test.each(table.rows<{ t_c: number; p_ws_pa: number; rel_tol: number }>('sat_pressure'))(
    '$t_c °C is $p_ws_pa Pa',
    ({ t_c, p_ws_pa, rel_tol }) => {
      expect(relativeError(good(saturationPressure(t_c)), p_ws_pa)).toBeLessThan(rel_tol);
    },
  );

  test.each(grid)('grid: $t_c °C', ({ t_c, p_ws_pa }) => {
    expect(relativeError(good(saturationPressure(t_c)), p_ws_pa)).toBeLessThan(5e-4);
  });

  test.each(table.rows<{ t_c: number; rho_sat_g_m3: number; abs_tol: number }>('absolute_humidity'))(
    'air saturated at $t_c °C holds $rho_sat_g_m3 g/m³',
    ({ t_c, rho_sat_g_m3, abs_tol }) => {
      // Gas law with the specific gas constant of water vapor, 461.5 J/(kg K).
      const grams = (good(saturationPressure(t_c)) / (461.5 * (t_c + 273.15))) * 1000;
      expect(Math.abs(grams - rho_sat_g_m3)).toBeLessThanOrEqual(abs_tol);
    },
  );

  type Form = {
    name: string;
    A?: number;
    B?: number;
    C?: number;
    m?: number;
    Tn?: number;
    stated_accuracy: string | null;
  };
  const printed = table.rows<Form>('formula_constants');
  const forms = printed.filter(({ A }) => A !== undefined);

  test('is the handbook form with the printed constants', () => {
    type Handbook = { C8: number; C9: number; C10: number; C11: number; C12: number; C13: number };
    const handbook = printed.find((form): form is Form & Handbook => 'C13' in form);
    if (!handbook) throw new Error('no handbook form');
    const { C8, C9, C10, C11, C12, C13 } = handbook;
    for (let celsius = 1; celsius <= 200; celsius += 1) {
      const k = celsius + 273.15;
      const pascals = Math.exp(C8 / k + C9 + C10 * k + C11 * k ** 2 + C12 * k ** 3 + C13 * Math.log(k));
      expect(relativeError(good(saturationPressure(celsius)), pascals)).toBeLessThan(1e-6);
    }
  });

  test.each(forms)('agrees with $name', ({ A = 0, B, C, m, Tn, stated_accuracy }) => {
    const stated = Number(/([\d.]+) ?%/.exec(stated_accuracy ?? '')?.[1] ?? 0.4);
    for (let celsius = 5; celsius <= 35; celsius += 1) {
      const exponent =
        m === undefined
          ? ((B ?? 0) * celsius) / ((C ?? 0) + celsius)
          : (Math.LN10 * m * celsius) / ((Tn ?? 0) + celsius);
      const allowed = Math.max(stated, 0.1) / 100; // both sides have their own error
      expect(relativeError(good(saturationPressure(celsius)), 100 * A * Math.exp(exponent))).toBeLessThan(
        allowed,
      );
    }
  });

  test('rises all the way from -100 to 200 °C, and refuses beyond', () => {
    let before = 0;
    for (let celsius = -100; celsius <= 200; celsius += 0.5) {
      const pascals = good(saturationPressure(celsius));
      expect(pascals).toBeGreaterThan(before);
      before = pascals;
    }
    expect(refusal(saturationPressure(201))).toBe(
      'The temperature was given as 201 °C (394 °F); it must be between -100 °C (-148 °F) and 200 °C (392 °F). Check the number and its unit.',
    );
    expect(refusal(saturationPressure(Number.NaN))).toContain('NaN');
  });
});

describe('dew point', () => {
  test.each(grid)('grid: $t_c °C, $rh_pct %', (row) => {
    expect(Math.abs(good(dewPoint(airOf(row))) - row.t_dew_c)).toBeLessThan(0.05);
  });

  test.each(table.rows<Grid & { abs_tol_c: number }>('dew_point'))('printed: $t_c °C, $rh_pct %', (row) => {
    expect(Math.abs(good(dewPoint(airOf(row))) - row.t_dew_c)).toBeLessThanOrEqual(row.abs_tol_c);
  });

  type Fahrenheit = { t_f: number; rh_pct: number; t_dew_f: number; abs_tol_f: number };
  test.each(table.rows<Fahrenheit>('dew_point_fahrenheit'))('printed: $t_f °F, $rh_pct %', (row) => {
    const air = { celsius: toCelsius(row.t_f), relativeHumidity: row.rh_pct / 100 };
    expect(Math.abs(toFahrenheit(good(dewPoint(air))) - row.t_dew_f)).toBeLessThanOrEqual(row.abs_tol_f);
  });

  test('there and back: air saturated at its dew point has the same vapor pressure', () => {
    for (const row of grid) {
      const air = airOf(row);
      const pascals = good(saturationPressure(air.celsius)) * air.relativeHumidity;
      expect(relativeError(good(saturationPressure(good(dewPoint(air)))), pascals)).toBeLessThan(1e-9);
    }
  });

  test('refuses bone-dry air and more than 100 %', () => {
    expect(refusal(dewPoint({ celsius: 20, relativeHumidity: 0 }))).toBe(
      'The relative humidity was given as 0 %; it must be between 0.1 % and 100 %. Check the number and its unit.',
    );
    expect(refusal(dewPoint({ celsius: 20, relativeHumidity: 1.3 }))).toContain('given as 130 %');
  });
});

describe('wet bulb', () => {
  test.each(grid)('grid: $t_c °C, $rh_pct %', (row) => {
    expect(Math.abs(good(wetBulb(airOf(row))) - row.t_wb_c)).toBeLessThan(0.01);
  });

  type Reading = {
    t_db_c: number;
    t_wb_c: number;
    t_dew_c?: number;
    rh_pct?: number;
    w_kg_per_kg?: number;
    p_ws_pa?: number;
    abs_tol_c?: number;
    abs_tol_pct?: number;
    abs_tol_w?: number;
  };
  test.each(table.rows<Reading>('wet_bulb'))('printed: $t_db_c °C dry, $t_wb_c °C wet', (row) => {
    const air = airWithBulb(row.t_db_c, row.t_wb_c);
    if (row.t_dew_c !== undefined)
      expect(Math.abs(good(dewPoint(air)) - row.t_dew_c)).toBeLessThanOrEqual(row.abs_tol_c ?? 0);
    if (row.rh_pct !== undefined)
      expect(Math.abs(air.relativeHumidity * 100 - row.rh_pct)).toBeLessThanOrEqual(row.abs_tol_pct ?? 0);
    if (row.w_kg_per_kg !== undefined)
      expect(Math.abs(good(humidityRatio(air)) - row.w_kg_per_kg)).toBeLessThanOrEqual(row.abs_tol_w ?? 0);
    if (row.p_ws_pa !== undefined)
      expect(relativeError(good(saturationPressure(row.t_db_c)), row.p_ws_pa)).toBeLessThan(0.01);
    expect.hasAssertions();
  });
});

describe('humidity ratio and deficit', () => {
  test.each(grid)('grid: $t_c °C, $rh_pct %', (row) => {
    expect(Math.abs(good(humidityRatio(airOf(row))) * 1000 - row.w_g_per_kg)).toBeLessThan(
      0.001 + 5e-4 * row.w_g_per_kg,
    );
    expect(relativeError(good(vaporPressureDeficit(airOf(row))), row.vpd_pa)).toBeLessThan(5e-4);
  });

  test.each(table.rows<{ t_c: number; w_sat_kg_per_kg: number; rel_tol: number }>('sat_humidity_ratio'))(
    'saturated at $t_c °C',
    ({ t_c, w_sat_kg_per_kg, rel_tol }) => {
      const ratio = good(humidityRatio({ celsius: t_c, relativeHumidity: 1 }));
      expect(relativeError(ratio, w_sat_kg_per_kg)).toBeLessThan(rel_tol);
    },
  );
});

test('the whole range: dew point ≤ wet bulb ≤ air, both rise with humidity, and psychrolib agrees', () => {
  for (let celsius = -30; celsius <= 50; celsius += 2.5) {
    let [dewBefore, bulbBefore] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let relativeHumidity = 0.05; relativeHumidity <= 1.0001; relativeHumidity += 0.05) {
      const air = { celsius, relativeHumidity: Math.min(relativeHumidity, 1) };
      const dew = good(dewPoint(air));
      const bulb = good(wetBulb(air));
      // Near freezing the handbook's wet bulb changes branch from ice to water, with a step of a few hundredths.
      expect(dew).toBeLessThanOrEqual(bulb + 0.02);
      expect(bulb).toBeLessThanOrEqual(celsius + 1e-6);
      expect(dew).toBeGreaterThan(dewBefore);
      expect(bulb).toBeGreaterThanOrEqual(bulbBefore);
      [dewBefore, bulbBefore] = [dew, bulb];
      const { relativeHumidity: humidity } = air;
      expect(Math.abs(dew - psychrolib.GetTDewPointFromRelHum(celsius, humidity))).toBeLessThan(0.01);
      expect(Math.abs(bulb - psychrolib.GetTWetBulbFromRelHum(celsius, humidity, PRESSURE))).toBeLessThan(
        0.01,
      );
      expect(
        relativeError(
          good(humidityRatio(air)),
          psychrolib.GetHumRatioFromRelHum(celsius, humidity, PRESSURE),
        ),
      ).toBeLessThan(1e-4);
    }
  }
});

test('every group of rows is read', () => {
  expect(table.unread()).toEqual([]);
});
