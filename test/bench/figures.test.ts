/** The tables of the guide are written by the bench, between two marks, from one file. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { type Figures, readFigures, withTables } from './figures.ts';
import { isMet, type Row } from './row.ts';
import { tableOf } from './table.ts';

const PART = { on: '2026-01-02', machine: 'a machine', took: 12 };
/** Invented figures. */
const ROWS: readonly Row[] = [
  { what: 'one walk', name: 'if-chain', value: 80, unit: 'ns' },
  { what: '', name: 'table', value: 20, unit: 'ns', ratio: [0.25, 0.2, 0.3], goal: { most: 1, of: 'ratio' } },
  {
    what: '',
    name: 'slow',
    value: 2.5e6,
    unit: 'ns',
    ratio: [31250, 31250, 31250],
    goal: { most: 1e6, of: 'value' },
  },
  { what: 'bytes', name: 'page', value: 12_841, unit: 'bytes', goal: { most: 13_000, of: 'value' } },
  { what: 'library', name: 'over the table', value: 400, unit: 'times', goal: { least: 500, of: 'value' } },
];

it('says of each line what it is beside the first, its goal, and whether that is met', () => {
  expect(
    tableOf({ quick: { ...PART, rows: ROWS } })
      .split('\n')
      .slice(-5),
  ).toEqual([
    '| one walk | if-chain | 80 ns | 1 |  |  |',
    '|  | table | 20 ns | 0.25 (0.20 to 0.30) | ≤ 1 × | yes |',
    '|  | slow | 2.5 ms | 31250 | ≤ 1.0 ms | **no** |',
    '| bytes | page | 12,841 | 1 | ≤ 13,000 | yes |',
    '| library | over the table | 400 × | 1 | ≥ 500 × | **no** |',
  ]);
});

it('knows when there is no goal, and misses one that was not measured', () => {
  expect(ROWS.map(isMet)).toEqual([undefined, true, false, true, false]);
  expect(isMet({ what: '', name: 'x', value: 1, unit: 'ns', goal: { most: 1, of: 'ratio' } })).toBe(false);
});

it('writes between the marks, and nothing else', () => {
  const guide = (inside: string) =>
    `# Top\n\n<!-- figures: written by \`npm run bench -- --write\` -->${inside}<!-- end of figures -->\n\nBelow.\n`;
  const figures: Figures = { quick: { ...PART, rows: ROWS } };
  const once = withTables(guide('\n\nold\n\n'), figures);
  expect(once).toBe(guide(`\n\n${tableOf(figures)}\n\n`));
  expect(withTables(once, figures)).toBe(once);
  expect(() => withTables('# no marks\n', figures)).toThrow('has no place for the figures');
});

it('finds in the guide what the kept figures say', () => {
  const guide = readFileSync('DEVELOPERS.md', 'utf8');
  expect(withTables(guide, readFigures())).toBe(guide);
});
