import { expect, test } from 'vitest';
import { dewPointMargin, LEAST_MARGIN_CELSIUS } from '#engine/calc/dew-point-margin.ts';
import { toCelsius } from '#engine/calc/units.ts';
import json from './dew-point-margin.table.json' with { type: 'json' };
import { good, refusal } from './good.ts';
import { readTable } from './table.ts';

const table = readTable(json);

type Vector = { t_air_c: number; rh_pct: number; t_surface_c: number; margin_c: number; ok_3c: boolean };
test.each(table.rows<Vector>('test_vectors'))('$t_air_c °C, $rh_pct %, surface $t_surface_c °C', (row) => {
  const air = { celsius: row.t_air_c, relativeHumidity: row.rh_pct / 100 };
  const { marginCelsius, fit } = good(dewPointMargin(air, row.t_surface_c));
  expect(Math.abs(marginCelsius - row.margin_c)).toBeLessThan(0.1);
  expect(fit).toBe(row.ok_3c);
});

type Example = {
  t_air_c?: number;
  t_air_f?: number;
  t_db_c?: number;
  rh_pct?: number;
  t_surface_c?: number;
  t_surface_min_f?: number;
  t_dew_c?: number;
  t_dew_f?: number;
  verdict?: string;
};
test.each(table.rows<Example>('published_examples'))('printed example %#', (row) => {
  const celsius = row.t_air_c ?? row.t_db_c ?? toCelsius(row.t_air_f ?? Number.NaN);
  const relativeHumidity = row.rh_pct === undefined ? 0.6722 : row.rh_pct / 100; // 21 °C dry and 17 °C wet: 67.2 %
  const surface = row.t_surface_c ?? toCelsius(row.t_surface_min_f ?? Number.NaN);
  const { dewPointCelsius, marginCelsius, fit } = good(
    dewPointMargin({ celsius, relativeHumidity }, surface),
  );
  expect(Math.abs(dewPointCelsius - (row.t_dew_c ?? toCelsius(row.t_dew_f ?? Number.NaN)))).toBeLessThan(0.5);
  if (row.verdict) expect(fit).toBe(row.verdict.startsWith('fit'));
  // The chart's least surface is 5 °F above its dew point, which is a little less than our 3 °C.
  else expect(Math.abs(marginCelsius - 2.4)).toBeLessThan(0.4);
});

test('a surface colder than the dew point is never fit, and 140 °F is refused only above 80 °C', () => {
  expect(good(dewPointMargin({ celsius: 25, relativeHumidity: 0.8 }, 10))).toMatchObject({ fit: false });
  expect(good(dewPointMargin({ celsius: 25, relativeHumidity: 0.8 }, 10)).marginCelsius).toBeLessThan(0);
  expect(refusal(dewPointMargin({ celsius: 25, relativeHumidity: 0.8 }, 90))).toContain('90 °C (194 °F)');
  expect(refusal(dewPointMargin({ celsius: 140, relativeHumidity: 0.8 }, 20))).toContain('air temperature');
});

test.each(table.rows<{ margin: number; unit: string }>('rule_statements'))(
  'the rule as printed: $margin $unit',
  ({ margin, unit }) => {
    // 5 °F is 2.8 °C: the same rule, rounded the other way. Ours is never the laxer.
    if (unit.startsWith('degC')) expect(margin).toBe(LEAST_MARGIN_CELSIUS);
    else expect(Math.round(toCelsius(32 + margin))).toBe(LEAST_MARGIN_CELSIUS);
    expect(LEAST_MARGIN_CELSIUS).toBeGreaterThanOrEqual(unit.startsWith('degC') ? margin : (margin * 5) / 9);
  },
);

test('every group of rows is read', () => {
  expect(table.unread()).toEqual([]);
});
