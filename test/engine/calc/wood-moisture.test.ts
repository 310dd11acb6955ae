import { expect, test } from 'vitest';
import { woodMoisturePercent, woodMoistureRange } from '#engine/calc/wood-moisture.ts';
import { good, refusal } from './good.ts';
import { readTable } from './table.ts';
import json from './wood-moisture.table.json' with { type: 'json' };

const table = readTable(json);
type Row = { t_c: number; rh_pct: number; emc_pct: number };
const percent = ({ t_c, rh_pct }: Row) =>
  good(woodMoisturePercent({ celsius: t_c, relativeHumidity: rh_pct / 100 }));

test.each(table.rows<Row>('handbook'))('handbook: $t_c °C, $rh_pct % → $emc_pct %', (row) => {
  expect(Math.abs(percent(row) - row.emc_pct)).toBeLessThanOrEqual(0.06);
});

test.each(table.rows<Row>('equation_grid'))('equation: $t_c °C, $rh_pct %', (row) => {
  expect(Math.abs(percent(row) - row.emc_pct)).toBeLessThan(0.001);
});

test('rises with humidity, falls with warmth above freezing, and refuses beyond the table', () => {
  for (let celsius = 1; celsius <= 54; celsius += 1)
    for (let rh_pct = 5; rh_pct <= 94; rh_pct += 1) {
      expect(percent({ t_c: celsius, rh_pct: rh_pct + 1, emc_pct: 0 })).toBeGreaterThan(
        percent({ t_c: celsius, rh_pct, emc_pct: 0 }),
      );
      // At the damp, cold end the printed table itself is flat to its last digit.
      if (celsius >= 10)
        expect(percent({ t_c: celsius - 1, rh_pct, emc_pct: 0 })).toBeGreaterThan(
          percent({ t_c: celsius, rh_pct, emc_pct: 0 }),
        );
    }
  expect(refusal(woodMoisturePercent({ celsius: 20, relativeHumidity: 1 }))).toBe(
    'The relative humidity was given as 100 %; it must be between 5 % and 95 %. Check the number and its unit.',
  );
});

test('what is shown is one per cent either way', () => {
  const { from, to } = good(woodMoistureRange({ celsius: 20, relativeHumidity: 0.5 }));
  expect(to - from).toBeCloseTo(2, 9);
});

test('every group of rows is read', () => {
  expect(table.unread()).toEqual([]);
});
