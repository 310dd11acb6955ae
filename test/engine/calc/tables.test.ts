import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const folder = new URL('.', import.meta.url);
const files = readdirSync(folder);
const tables = files.filter((file) => file.endsWith('.table.json'));
const text = (file: string) => readFileSync(new URL(file, folder), 'utf8');
const tests = files.filter((file) => file.endsWith('.test.ts') && file !== 'tables.test.ts');

test.each(tables)('%s is read by a test that leaves no group unread', (table) => {
  const reader = tests.find((file) => text(file).includes(`'./${table}'`));
  expect(reader, table).toBeDefined();
  expect(text(reader ?? '')).toContain('unread()');
});

/**
 * How many published or library rows of each group a test must read: a row that is dropped, or a group that is left out
 * of its file, is missed here. Rows that their own source shows to be misprints were never copied.
 */
const ROWS: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  abrasives: { grades: 50, equivalence: 11, scratch_facts: 3 },
  'color-difference': { sharma_pairs: 34, cie76: 5, brilliant_yellow: 3, near_neutral_and_yellowing: 16 },
  'dew-point-margin': { published_examples: 3, test_vectors: 14, rule_statements: 9 },
  drying: { dry_times: 20, evaporation_driver: 21 },
  'drying-sheets': { drying: 144, recoat: 68 },
  film: { coverage_us: 9, coverage_metric: 13, wet_to_dry: 13, thickness_from_coverage: 1, comb_gauge: 4 },
  'film-reflectance': { published_reflectance: 5 },
  flow: { water_tension: 2, water: 2, viscosity: 7, density: 4 },
  lab: { xyz_to_lab_d65: 3, dark_srgb: 11 },
  psychrometrics: {
    grid: 80,
    sat_pressure: 5,
    sat_humidity_ratio: 2,
    dew_point: 155,
    dew_point_fahrenheit: 1,
    wet_bulb: 4,
    absolute_humidity: 8,
    formula_constants: 7,
  },
  'wood-moisture': { handbook: 192 },
  yellowness: { yellowness: 1 },
};

test('no published row has been lost on the way', () => {
  expect(Object.keys(ROWS).map((name) => `${name}.table.json`)).toEqual(expect.arrayContaining(tables));
  for (const [name, groups] of Object.entries(ROWS)) {
    const { rows } = JSON.parse(text(`${name}.table.json`)) as { rows: Record<string, { prov: string }[]> };
    const outside = ({ prov }: { prov: string }) => prov !== 'computed';
    const counted = Object.entries(rows).map(([group, list]) => [group, list.filter(outside).length]);
    expect(Object.fromEntries(counted.filter(([, count]) => count !== 0)), name).toEqual(groups);
  }
});

test.each(tables)('%s: every row names a source of the table, or says that it is computed', (table) => {
  const { sources, rows } = JSON.parse(text(table)) as {
    sources: Record<string, string>;
    rows: Record<string, { prov: string; src?: string }[]>;
  };
  for (const { prov, src } of Object.values(rows).flat()) {
    expect(['published', 'library', 'computed']).toContain(prov);
    if (prov === 'computed') continue;
    for (const id of (src ?? 'none').split('+')) expect(Object.keys(sources)).toContain(id);
  }
});
