import { describe, expect, test } from 'vitest';
import { arrheniusFactor } from '#engine/calc/drying/arrhenius.ts';
import { evaporationDriver } from '#engine/calc/drying/evaporation-driver.ts';
import { steady } from '#engine/calc/drying/history.ts';
import { MECHANISMS, type Mechanism } from '#engine/calc/drying/mechanism.ts';
import { CHAIN, type Milestone } from '#engine/calc/drying/milestone.ts';
import { slowing } from '#engine/calc/drying/slowing.ts';
import { drying } from '#engine/calc/drying.ts';
import json from './drying.table.json' with { type: 'json' };
import { good, relativeError } from './good.ts';
import { dryingProduct } from './products.ts';
import { readTable } from './table.ts';

const table = readTable(json);

type DryTime = {
  coating: string;
  stage: string;
  t_c: number | null;
  minutes?: number;
  minutes_range?: [number, number];
};
const dryTimes = table.rows<DryTime>('dry_times');
const spanOf = ({ minutes = 0, minutes_range: [from, to] = [minutes, minutes] }: DryTime) => ({ from, to });

/** Which of our moments a sheet's word means. A skin that dust no longer sticks to counts as dry to touch. */
const MILESTONE_OF: Readonly<Record<string, Milestone>> = {
  'dust dry': 'touch',
  'touch dry': 'touch',
  touch: 'touch',
  'dry to sand': 'recoat',
  recoat: 'recoat',
};
const ORDER = ['dust dry', 'touch dry', 'touch', 'handle', 'dry to sand', 'recoat'];

describe('printed drying times', () => {
  test('no sheet prints a later stage with a shorter time, and neither do our products', () => {
    for (const coating of new Set(dryTimes.map((row) => row.coating)))
      for (const celsius of new Set(
        dryTimes.filter((row) => row.coating === coating).map((row) => row.t_c),
      )) {
        const times = dryTimes
          .filter((row) => row.coating === coating && row.t_c === celsius)
          .sort((one, two) => ORDER.indexOf(one.stage) - ORDER.indexOf(two.stage))
          .map((row) => spanOf(row).to);
        expect(times).toEqual([...times].sort((one, two) => one - two));
      }
  });

  /** Sheets with one temperature only: our generic product must not contradict them. */
  test.each([
    ['solvent lacquer', 'touch', 'sprayed-lacquer'],
    ['solvent lacquer', 'recoat', 'sprayed-lacquer'],
    ['modified-oil clear', 'touch', 'alkyd-varnish'],
    ['interior satin water-based white', 'touch', 'waterborne-acrylic'],
    ['interior satin water-based white', 'recoat', 'waterborne-acrylic'],
  ])('%s, %s: %s says so too', (start, stage, id) => {
    const row = dryTimes.find((one) => one.coating.startsWith(start) && one.stage === stage);
    if (!row) throw new Error(`no row for ${start}`);
    const { times } = good(
      drying({
        product: dryingProduct(id),
        history: steady({ celsius: row.t_c ?? 23, relativeHumidity: 0.5 }),
        relativeThickness: 1,
        elapsedMinutes: 0,
      }),
    );
    const ours = times.get(MILESTONE_OF[stage] ?? 'touch') ?? { from: Number.NaN, to: Number.NaN };
    expect(ours.from).toBeLessThanOrEqual(spanOf(row).to);
    expect(ours.to).toBeGreaterThanOrEqual(spanOf(row).from);
  });
});

describe('the forces behind it', () => {
  type Driver = {
    t_c: number;
    rh_pct: number;
    vpd_air_pa: number;
    vpd_wetbulb_pa: number;
    rel_rate_air_vpd: number;
    rel_rate_wetbulb: number;
  };
  const reference = { celsius: 23, relativeHumidity: 0.5 };
  test.each(table.rows<Driver>('evaporation_driver'))('driver at $t_c °C, $rh_pct %', (row) => {
    const air = { celsius: row.t_c, relativeHumidity: row.rh_pct / 100 };
    expect(relativeError(evaporationDriver(air, 1), row.vpd_air_pa)).toBeLessThan(0.005);
    expect(relativeError(evaporationDriver(air, 0), row.vpd_wetbulb_pa)).toBeLessThan(0.005);
    const rate = (warmth: number) => evaporationDriver(air, warmth) / evaporationDriver(reference, warmth);
    // The printed rates are rounded to three decimals.
    expect(Math.abs(rate(1) - row.rel_rate_air_vpd)).toBeLessThan(0.005 * row.rel_rate_air_vpd + 0.0005);
    expect(Math.abs(rate(0) - row.rel_rate_wetbulb)).toBeLessThan(0.005 * row.rel_rate_wetbulb + 0.0005);
  });

  type Arrhenius = { ea_kj_mol: number; from_c: number; to_c: number; rate_factor: number };
  test.each(table.rows<Arrhenius>('arrhenius'))('$ea_kj_mol kJ/mol, $from_c to $to_c °C', (row) => {
    expect(Math.abs(arrheniusFactor(row.ea_kj_mol, row.from_c, row.to_c) - row.rate_factor)).toBeLessThan(
      0.001,
    );
  });

  const everywhere = (visit: (mechanism: Mechanism, milestone: Milestone) => void) => {
    for (const mechanism of MECHANISMS) for (const milestone of CHAIN) visit(mechanism, milestone);
  };

  test('ten degrees warmer is 1.3 to 2.2 times faster in the middle of the range, and never slower, 10 to 35 °C', () => {
    everywhere((mechanism, milestone) => {
      for (let celsius = 10; celsius <= 25; celsius += 1) {
        const at = (degrees: number) => ({ celsius: degrees, relativeHumidity: 0.5 });
        const slow = slowing(mechanism, milestone, at(celsius + 10), at(celsius), 1);
        for (const q10 of [Math.sqrt(slow.from * slow.to), (slow.from + slow.to) / 2]) {
          expect(q10).toBeGreaterThanOrEqual(1.3);
          expect(q10).toBeLessThanOrEqual(2.2);
        }
        expect(slow.from).toBeGreaterThanOrEqual(1);
      }
    });
  });

  test('so are both ends of the range, where it has its full width: 15 °C or more from the climate of the figures', () => {
    everywhere((mechanism, milestone) => {
      const at = (degrees: number) => ({ celsius: degrees, relativeHumidity: 0.5 });
      for (const [label, cool] of [
        [35, 10],
        [10, 25],
      ] as const) {
        const [slow, quick] = [cool, cool + 10].map((celsius) =>
          slowing(mechanism, milestone, at(label), at(celsius), 1),
        );
        for (const end of ['from', 'to'] as const) {
          const q10 = (slow?.[end] ?? Number.NaN) / (quick?.[end] ?? Number.NaN);
          expect(q10).toBeGreaterThanOrEqual(1.3);
          expect(q10).toBeLessThanOrEqual(2.2);
        }
      }
    });
  });

  test('the same climate changes nothing, and colder is never faster, from -10 to 45 °C and wherever the figures hold', () => {
    everywhere((mechanism, milestone) => {
      for (const label of [2, 8, 12, 23, 33, 38]) {
        const at = (celsius: number) =>
          slowing(
            mechanism,
            milestone,
            { celsius: label, relativeHumidity: 0.5 },
            { celsius, relativeHumidity: 0.5 },
            1,
          );
        expect(at(label)).toEqual({ from: 1, to: 1 });
        for (let celsius = -10; celsius < 45; celsius += 1) {
          const [cold, warm] = [at(celsius), at(celsius + 1)];
          expect(cold.from).toBeGreaterThanOrEqual(warm.from * (1 - 1e-9));
          expect(cold.to).toBeGreaterThanOrEqual(warm.to * (1 - 1e-9));
        }
      }
    });
  });

  test('one factor is no wider than ±40 % from 10 to 35 °C and 30 to 85 % humidity', () => {
    everywhere((mechanism, milestone) => {
      for (let celsius = 10; celsius <= 35; celsius += 2.5)
        for (let humidity = 0.3; humidity <= 0.851; humidity += 0.05) {
          const { from, to } = slowing(
            mechanism,
            milestone,
            reference,
            { celsius, relativeHumidity: humidity },
            1,
          );
          expect((to - from) / (to + from)).toBeLessThanOrEqual(0.4);
        }
    });
  });

  test('damp air never hastens a water-based film, and moves an oil-based one by less than 10 %', () => {
    everywhere((mechanism, milestone) => {
      for (let celsius = 10; celsius <= 35; celsius += 5) {
        const damp = (relativeHumidity: number) =>
          slowing(mechanism, milestone, reference, { celsius, relativeHumidity }, 1);
        for (let humidity = 0.05; humidity <= 0.9; humidity += 0.05) {
          expect(damp(humidity + 0.05).from).toBeGreaterThanOrEqual(damp(humidity).from);
          expect(damp(humidity + 0.05).to).toBeGreaterThanOrEqual(damp(humidity).to);
        }
        if (mechanism !== 'coalescence') expect(damp(1e-3).to * 1.1).toBeGreaterThan(damp(0.95).to);
      }
    });
  });

  test('from 30 to 85 % the first, wet stage of a water-based film grows up to about five times', () => {
    const damp = (relativeHumidity: number) =>
      slowing(
        'coalescence',
        'open',
        { celsius: 20, relativeHumidity: 0.3 },
        { celsius: 20, relativeHumidity },
        1,
      );
    expect(damp(0.85).from).toBeGreaterThan(1);
    expect(Math.sqrt(damp(0.85).from * damp(0.85).to)).toBeLessThan(5.5);
    expect(slowing('coalescence', 'cure', reference, { celsius: 23, relativeHumidity: 0.85 }, 1)).toEqual({
      from: 1,
      to: 1,
    });
  });

  test('twice the film takes at least twice the time, at most four times', () => {
    everywhere((mechanism, milestone) => {
      const { from, to } = slowing(mechanism, milestone, reference, reference, 2);
      expect(from).toBeGreaterThanOrEqual(2);
      expect(to).toBeLessThanOrEqual(4);
    });
  });
});

test('every group of rows is read', () => {
  expect(table.unread()).toEqual([]);
});
