/** What was measured, as the tables of the guide. */
import type { Figures, Part } from './figures.ts';
import { growthTables } from './growth/table.ts';
import { markdown } from './markdown.ts';
import type { SearchFigures } from './quick/search.ts';
import { type Goal, isMet, type Row, type Unit } from './row.ts';

const time = (ns: number): string =>
  ns < 1e3
    ? `${ns.toFixed(0)} ns`
    : ns < 1e6
      ? `${(ns / 1e3).toFixed(1)} µs`
      : ns < 1e9
        ? `${(ns / 1e6).toFixed(1)} ms`
        : `${(ns / 1e9).toFixed(1)} s`;
const share = (part: number): string => `${(100 * part).toFixed(1)} %`;
const times = (ratio: number): string => (ratio < 10 ? ratio.toFixed(2) : ratio.toFixed(0));

/** A figure in the words of its unit. */
const inUnit = (value: number, unit: Unit): string =>
  unit === 'ns'
    ? time(value)
    : unit === 'bytes'
      ? value < 1e6
        ? value.toLocaleString('en-US', { maximumFractionDigits: 0 })
        : `${(value / 1e6).toFixed(1)} MB`
      : unit === 'times'
        ? `${times(value)} ×`
        : unit === 'questions'
          ? value.toFixed(2)
          : value.toLocaleString('en-US', { maximumFractionDigits: 1 });

const goalIn = (goal: Goal, unit: Unit): string => {
  const [sign, bound] = 'most' in goal ? ['≤', goal.most] : ['≥', goal.least];
  return `${sign} ${goal.of === 'value' ? inUnit(bound, unit) : `${bound} ×`}`;
};

const rowCells = (row: Row): readonly string[] => {
  const { what, name, value, unit, ratio, goal } = row;
  const [middle = 1, least = 1, most = 1] = ratio ?? [];
  const met = isMet(row);
  return [
    what,
    name,
    inUnit(value, unit),
    ratio
      ? `${times(middle)}${least === most ? '' : ` (${times(least)} to ${times(most)})`}`
      : what
        ? '1'
        : '',
    goal ? goalIn(goal, unit) : '',
    met === undefined ? '' : met ? 'yes' : '**no**',
  ];
};

const rowsTable = (rows: readonly Row[]): string =>
  markdown(['what', 'contestant', 'measured', '× the first', 'goal', 'met'], rows.map(rowCells));

const searchTable = ({ phrases, rows }: SearchFigures): string =>
  [
    `${phrases} phrases of threads that no search has learned from.`,
    markdown(
      ['search', 'first', 'in three', 'median', 'p95', 'data, gz'],
      rows.map(({ name, first, inThree, ms, p95, bytes }) => [
        name,
        share(first),
        share(inThree),
        `${ms.toFixed(2)} ms`,
        `${p95.toFixed(2)} ms`,
        inUnit(bytes, 'bytes'),
      ]),
    ),
  ].join('\n\n');

const HEADS: Readonly<Record<keyof Figures, string>> = {
  quick: '`npm run bench`',
  browser: '`npm run bench -- browser`: Chromium, processor slowed 4×',
  build: '`npm run bench -- build`',
  growth: '`npm run bench -- growth`',
};

const partText = (name: keyof Figures, { on, machine, took, rows, search, growth, notes }: Part): string =>
  [
    `**${HEADS[name]}** (${on}; ${machine}; took ${took < 90 ? `${took} s` : `${(took / 60).toFixed(1)} minutes`})${notes ? `. ${notes}` : ''}`,
    ...(rows.length ? [rowsTable(rows)] : []),
    ...(search ? [searchTable(search)] : []),
    ...(growth ? [growthTables(growth)] : []),
  ].join('\n\n');

/** All parts that were measured, in a settled order. */
export const tableOf = (figures: Figures): string =>
  (['quick', 'browser', 'build', 'growth'] as const)
    .flatMap((name) => {
      const part = figures[name];
      return part ? [partText(name, part)] : [];
    })
    .join('\n\n');
