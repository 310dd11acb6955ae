/** What the guide's tables are made from: one file of figures, and two marks in the guide between which they stand. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import type { GrowthFigures } from './growth/figures.ts';
import type { SearchFigures } from './quick/search.ts';
import type { Row } from './row.ts';
import { tableOf } from './table.ts';

export const PARTS = ['quick', 'browser', 'build', 'growth'] as const;
export type PartName = (typeof PARTS)[number];
/** What one command measured. */
export type Measured = {
  readonly rows: readonly Row[];
  readonly search?: SearchFigures;
  readonly growth?: GrowthFigures;
  /** What must be known to read the figures. */
  readonly notes?: string;
};
export type Part = Measured & {
  /** The day. */
  readonly on: string;
  readonly machine: string;
  /** Seconds that all of it took. */
  readonly took: number;
};
export type Figures = { readonly [name in PartName]?: Part };

const FILE = 'test/bench/figures.json';
const GUIDE = 'DEVELOPERS.md';
const BEGIN = '<!-- figures: written by `npm run bench -- --write` -->';
const END = '<!-- end of figures -->';

/** A text with the tables between the marks in place of what stood there. */
export const withTables = (guide: string, figures: Figures): string => {
  const [begin, end] = [guide.indexOf(BEGIN), guide.indexOf(END)];
  if (begin < 0 || end < begin) throw new Error(`${GUIDE} has no place for the figures: ${BEGIN} … ${END}`);
  return `${guide.slice(0, begin + BEGIN.length)}\n\n${tableOf(figures)}\n\n${guide.slice(end)}`;
};

/** The figures that were written last. The file is the bench's own. */
export const readFigures = (): Figures =>
  existsSync(FILE) ? (JSON.parse(readFileSync(FILE, 'utf8')) as Figures) : {};

/** Keeps what was measured beside what other parts measured before, and writes all of it into the guide. */
export const writeFigures = (measured: Figures): void => {
  const figures: Figures = { ...readFigures(), ...measured };
  writeFileSync(FILE, `${JSON.stringify(figures, undefined, 2)}\n`);
  writeFileSync(GUIDE, withTables(readFileSync(GUIDE, 'utf8'), figures));
};
