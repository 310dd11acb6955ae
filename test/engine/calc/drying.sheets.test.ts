/**
 * Every one-part sheet with two or more temperatures that we found is here, hit or miss. Left out: two-part coatings,
 * which harden by another reaction; sheets that do not say what kind of coating they are; a second sheet with the same
 * figures; and times for a second coat wet on wet, which come before the first is dry to touch.
 */
import { describe, expect, test } from 'vitest';
import { steady } from '#engine/calc/drying/history.ts';
import type { Mechanism } from '#engine/calc/drying/mechanism.ts';
import type { Milestone } from '#engine/calc/drying/milestone.ts';
import { drying } from '#engine/calc/drying.ts';
import first from './drying.table.json' with { type: 'json' };
import further from './drying-sheets.table.json' with { type: 'json' };
import { good } from './good.ts';
import { dryingProduct } from './products.ts';
import { readTable } from './table.ts';

type Printed = {
  coating: string;
  mechanism: Mechanism;
  stage: string;
  t_c: number;
  rh_pct?: number;
  minutes?: number;
  minutes_range?: [number, number];
};
type Prediction = { what: string; celsius: number; anchor: Printed; want: number; from: number; to: number };

const sheets = readTable(further);
const DRYING = [
  ...sheets.rows<Printed>('drying'),
  ...readTable(first)
    .rows<Printed>('dry_times')
    .flatMap((row): Printed[] => {
      if (row.coating.startsWith('fast semigloss alkyd')) return [{ ...row, mechanism: 'oxidation' }];
      if (row.coating.startsWith('water-borne acrylate')) return [{ ...row, mechanism: 'coalescence' }];
      return [];
    }),
];
const RECOAT = sheets.rows<Printed>('recoat');

/** Which of our moments a sheet's word means. A skin that dust no longer sticks to counts as dry to touch. */
const MILESTONE_OF: Readonly<Record<string, Milestone>> = {
  'dust dry': 'touch',
  'touch dry': 'touch',
  'hard dry': 'recoat',
  'dry to sand': 'recoat',
  recoat: 'recoat',
};
const PRODUCT_OF: Readonly<Partial<Record<Mechanism, string>>> = {
  oxidation: 'alkyd-varnish',
  coalescence: 'waterborne-acrylic',
  evaporation: 'sprayed-lacquer',
};

const spanOf = ({ minutes = Number.NaN, minutes_range: [from, to] = [minutes, minutes] }: Printed) => ({
  from,
  to,
});
const off = ({ t_c }: Printed) => Math.abs(t_c - 23);

/** One row predicted from its anchor, which is entered as the label's. Wide limits: sheets go beyond furniture. */
const predict = (anchor: Printed, row: Printed): Prediction => {
  const milestone = MILESTONE_OF[row.stage];
  const id = PRODUCT_OF[row.mechanism];
  if (!milestone || !id) throw new Error(`what is ${row.stage}, ${row.mechanism}?`);
  const { mechanism, figures } = dryingProduct(id);
  const climate = ({ t_c, rh_pct = 50 }: Printed) => ({ celsius: t_c, relativeHumidity: rh_pct / 100 });
  const { times } = good(
    drying({
      product: {
        mechanism,
        figures,
        limits: { celsius: { from: 0, to: 50 }, relativeHumidity: { from: 0, to: 1 } },
      },
      label: { minutes: { [milestone]: spanOf(anchor) }, climate: climate(anchor) },
      history: steady(climate(row)),
      relativeThickness: 1,
      elapsedMinutes: 0,
    }),
  );
  const { from, to } = times.get(milestone) ?? { from: Number.NaN, to: Number.NaN };
  const printed = spanOf(row);
  const what = `${row.coating}, ${row.stage}`;
  return { what, celsius: row.t_c, anchor, want: (printed.from + printed.to) / 2, from, to };
};

/** Each coating and stage: all rows but the one nearest 23 °C. */
const predictions = (rows: readonly Printed[]): Prediction[] =>
  [...Map.groupBy(rows, ({ coating, stage }) => `${coating}, ${stage}`).values()].flatMap((group) => {
    const [anchor, ...others] = group.toSorted((one, two) => off(one) - off(two));
    return anchor ? others.map((row) => predict(anchor, row)) : [];
  });

/** Floating point: a printed time that stays the same lies on the very edge of the range. */
const ALMOST = 1e-9;
const inside = ({ want, from, to }: Prediction): boolean =>
  want >= from * (1 - ALMOST) && want <= to * (1 + ALMOST);
const share = (all: readonly Prediction[]): number => all.filter(inside).length / all.length;

describe('against printed drying times', () => {
  const dry = predictions(DRYING);
  const recoat = predictions(RECOAT);
  const all = [...dry, ...recoat];

  test('there are many, of many coatings, colder and hotter', () => {
    expect(dry.length).toBeGreaterThanOrEqual(70);
    expect(all.length).toBeGreaterThanOrEqual(100);
    expect(new Set([...DRYING, ...RECOAT].map(({ coating }) => coating)).size).toBeGreaterThanOrEqual(16);
    expect(all.filter(({ celsius, anchor }) => celsius < anchor.t_c).length).toBeGreaterThanOrEqual(50);
    expect(all.filter(({ celsius, anchor }) => celsius > anchor.t_c).length).toBeGreaterThanOrEqual(30);
  });

  const missed = (some: readonly Prediction[]) => JSON.stringify(some.filter((one) => !inside(one)));

  test('nine of ten drying times lie inside the range predicted from the row nearest 23 °C', () => {
    expect(share(dry), missed(dry)).toBeGreaterThanOrEqual(0.9);
    expect(share(dry.filter(({ celsius }) => celsius >= 10 && celsius <= 35))).toBeGreaterThanOrEqual(0.9);
  });

  test('times to recoat, which makers round to working days: eight of ten', () => {
    expect(share(recoat), missed(recoat)).toBeGreaterThanOrEqual(0.8);
  });

  test('the range is no wider than ±40 % between 10 and 35 °C', () => {
    for (const { what, celsius, anchor, from, to } of all)
      if (celsius >= 10 && celsius <= 35 && anchor.minutes)
        expect((to - from) / (to + from), what).toBeLessThanOrEqual(0.4);
  });
});

test('every group of rows is read', () => {
  expect(sheets.unread()).toEqual([]);
});
