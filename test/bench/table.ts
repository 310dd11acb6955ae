import type { Benched } from './bench.ts';

const time = (ns: number): string =>
  ns < 1e3 ? `${ns.toFixed(0)} ns` : ns < 1e6 ? `${(ns / 1e3).toFixed(1)} µs` : `${(ns / 1e6).toFixed(1)} ms`;
const share = (part: number): string => `${(100 * part).toFixed(1)} %`;
const times = (ratio: number): string => (ratio < 10 ? ratio.toFixed(2) : ratio.toFixed(0));

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [row(head), row(head.map(() => '---')), ...rows.map(row)].join('\n');

/** What was measured, as the tables of the guide. */
export const tableOf = ({ machine, sessions, rows, bytes, search }: Benched): string =>
  [
    `${machine}; ${sessions} cases; ratios of rounds that took turns, median (least to most).`,
    table(
      ['what', 'contestant', 'time', '× the first', 'goal'],
      rows.flatMap(({ what, goal, timed }) =>
        timed.map(({ name, ns, ratio: [middle, least, most] }, at) => [
          at ? '' : what,
          name,
          time(ns),
          at ? `${times(middle)}${least === most ? '' : ` (${times(least)} to ${times(most)})`}` : '1',
          at === 1 && goal !== undefined ? `≤ ${goal}` : '',
        ]),
      ),
    ),
    table(
      ['bytes', ''],
      Object.entries(bytes).map(([name, count]) => [name, String(count)]),
    ),
    `${search.phrases} phrases of threads that no search has learned from.`,
    table(
      ['search', 'first', 'in three', 'median', 'p95', 'data, gz'],
      search.rows.map(({ name, first, inThree, ms, p95, bytes: size }) => [
        name,
        share(first),
        share(inThree),
        `${ms.toFixed(2)} ms`,
        `${p95.toFixed(2)} ms`,
        String(size),
      ]),
    ),
  ].join('\n\n');
