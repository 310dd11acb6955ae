import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { steady } from '#engine/calc/drying/history.ts';
import type { Mechanism } from '#engine/calc/drying/mechanism.ts';
import { drying } from '#engine/calc/drying.ts';
import table from './drying-sheets.table.json' with { type: 'json' };
import {
  climateOf,
  MILESTONE_OF,
  middleOf,
  type Printed,
  printedRows,
  spanOf,
  stepsOf,
} from './drying-sheets.ts';
import { good } from './good.ts';
import { dryingProduct } from './products.ts';
import { readTable } from './table.ts';

const sheets = readTable(table);
const printed = printedRows(sheets);

type Prediction = { what: string; celsius: number; anchor: Printed; want: number; from: number; to: number };

const PRODUCT_OF: Readonly<Partial<Record<Mechanism, string>>> = {
  oxidation: 'alkyd-varnish',
  coalescence: 'waterborne-acrylic',
  evaporation: 'sprayed-lacquer',
};

/** One row predicted from its anchor, which is entered as the label's. Wide limits: sheets go beyond furniture. */
const predict = ({ anchor, row }: { anchor: Printed; row: Printed }): Prediction => {
  const milestone = MILESTONE_OF[row.stage];
  const id = PRODUCT_OF[row.mechanism];
  if (!milestone || !id) throw new Error(`what is ${row.stage}, ${row.mechanism}?`);
  const { mechanism, figures } = dryingProduct(id);
  const { times } = good(
    drying({
      product: {
        mechanism,
        figures,
        limits: { celsius: { from: -10, to: 50 }, relativeHumidity: { from: 0, to: 1 } },
      },
      label: { minutes: { [milestone]: spanOf(anchor) }, climate: climateOf(anchor) },
      history: steady(climateOf(row)),
      relativeThickness: 1,
      elapsedMinutes: 0,
    }),
  );
  const { from, to } = times.get(milestone) ?? { from: Number.NaN, to: Number.NaN };
  const what = `${row.coating}, ${row.stage}`;
  return { what, celsius: row.t_c, anchor, want: middleOf(row), from, to };
};

/** Floating point: a printed time that stays the same lies on the very edge of the range. */
const ALMOST = 1e-9;
const inside = ({ want, from, to }: Prediction): boolean =>
  want >= from * (1 - ALMOST) && want <= to * (1 + ALMOST);
const share = (all: readonly Prediction[]): number => all.filter(inside).length / all.length;
const usual = ({ celsius }: Prediction): boolean => celsius >= 10 && celsius <= 35;

describe('against printed drying times', () => {
  const dry = stepsOf(printed.drying).map(predict);
  const recoat = stepsOf(printed.recoat).map(predict);
  const all = [...dry, ...recoat];
  const missed = (some: readonly Prediction[]) => JSON.stringify(some.filter((one) => !inside(one)));

  test('there are many, of many coatings, colder and hotter', () => {
    expect(dry.length).toBeGreaterThanOrEqual(111);
    expect(all.length).toBeGreaterThanOrEqual(160);
    expect(
      new Set([...printed.drying, ...printed.recoat].map(({ coating }) => coating)).size,
    ).toBeGreaterThanOrEqual(25);
    expect(all.filter(({ celsius, anchor }) => celsius < anchor.t_c).length).toBeGreaterThanOrEqual(100);
    expect(all.filter(({ celsius, anchor }) => celsius > anchor.t_c).length).toBeGreaterThanOrEqual(50);
  });

  test('nine of ten lie inside the range predicted from the row nearest 23 °C', () => {
    expect(share(all), missed(all)).toBeGreaterThanOrEqual(0.9);
    expect(share(all.filter(usual)), missed(all.filter(usual))).toBeGreaterThanOrEqual(0.9);
  });

  test('as many as README.md and the page on this site tell', () => {
    const coatings = new Set([...printed.drying, ...printed.recoat].map(({ coating }) => coating)).size;
    const of = (some: readonly Prediction[]) => `${some.filter(inside).length} of ${some.length}`;
    const lie = all.filter(inside).length;
    const told = (file: string) => readFileSync(file, 'utf8').replaceAll(/\s+/g, ' ');
    expect(told('README.md')).toContain(
      `chosen on ${all.length} printed steps of ${coatings} coatings, ${lie} of which lie inside: ${of(dry)} drying times, ${of(recoat)} recoat intervals`,
    );
    expect(told('site/pages/about.astro')).toContain(
      `Chosen on ${all.length} printed steps of ${coatings} coatings, most of them for metal: ${lie} lie inside, among them ${of(recoat)} recoat intervals.`,
    );
  });

  test('nine of ten drying times do', () => {
    expect(share(dry), missed(dry)).toBeGreaterThanOrEqual(0.9);
    expect(share(dry.filter(usual))).toBeGreaterThanOrEqual(0.9);
  });

  test('nine of ten intervals to the next coat do, to the nearest row: makers round them to working days', () => {
    const misses = recoat.filter((one) => !inside(one)).length;
    expect(misses, missed(recoat)).toBeLessThanOrEqual(Math.round(recoat.length / 10));
  });

  test('the range is no wider than ±40 % between 10 and 35 °C', () => {
    for (const { what, anchor, from, to } of all.filter(usual))
      if (anchor.minutes) expect((to - from) / (to + from), what).toBeLessThanOrEqual(0.4);
  });
});

test('every group of rows is read', () => {
  expect(sheets.unread()).toEqual([]);
});
