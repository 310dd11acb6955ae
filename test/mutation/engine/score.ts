/** The share that was killed, and how sure that is. */
import type { State, Tried } from './try.ts';

export const stratumOf = (file: string): string => {
  const [, folder, more] = file.split('/');
  return more ? (folder as string) : 'itself';
};

const isKilled = (state: State) => state === 'killed' || state === 'timed out';

type Row = {
  readonly stratum: string;
  readonly of: number;
  readonly states: Readonly<Record<State, number>>;
  readonly tried: number;
  readonly killed: number;
};

const rowsOf = (tried: readonly Tried[], sizes: ReadonlyMap<string, number>): Row[] =>
  [...sizes].map(([stratum, of]) => {
    const own = tried.filter(({ mutant }) => stratumOf(mutant.file) === stratum);
    const states = { killed: 0, 'timed out': 0, survived: 0, 'no coverage': 0 };
    for (const { state } of own) states[state] += 1;
    return {
      stratum,
      of,
      states,
      tried: own.length,
      killed: own.filter(({ state }) => isKilled(state)).length,
    };
  });

/**
 * The score of all from a sample by strata: each weighs as many as it has. The interval (95 %) is Wilson's with the
 * number of draws that would be as sure without strata (Korn and Graubard, Survey Methodology 24(2), 1998, use the
 * same number for another interval).
 */
const scoreOf = (rows: readonly Row[]): { score: number; low: number; high: number } => {
  const drawn = rows.filter(({ tried }) => tried > 0);
  const all = drawn.reduce((sum, { of }) => sum + of, 0);
  let score = 0;
  let variance = 0;
  for (const { of, tried, killed } of drawn) {
    const weight = of / all;
    const share = killed / tried;
    score += weight * share;
    // Of a stratum that was tried whole nothing is left to chance; one extra of each keeps small ones from zero.
    const careful = (killed + 1) / (tried + 2);
    variance += (weight ** 2 * careful * (1 - careful) * (1 - tried / of)) / tried;
  }
  if (variance === 0) return { score, low: score, high: score };
  const n = Math.max(1, Math.max(score * (1 - score), 1e-4) / variance);
  const z = 1.96;
  const middle = (score + z ** 2 / (2 * n)) / (1 + z ** 2 / n);
  const half = (z / (1 + z ** 2 / n)) * Math.sqrt((score * (1 - score)) / n + z ** 2 / (4 * n ** 2));
  return { score, low: Math.min(score, middle - half), high: middle + half };
};

const percent = (share: number) => `${(share * 100).toFixed(1)} %`;

export const tableOf = (tried: readonly Tried[], sizes: ReadonlyMap<string, number>): string => {
  const rows = rowsOf(tried, sizes).filter((row) => row.tried > 0);
  const line = (name: string, some: readonly Row[]) => {
    const sum = (of: (row: Row) => number) => some.reduce((total, row) => total + of(row), 0);
    const { score, low, high } = scoreOf(some);
    return `| ${[
      name,
      sum((row) => row.of),
      sum((row) => row.tried),
      sum((row) => row.states.killed),
      sum((row) => row.states['timed out']),
      sum((row) => row.states.survived),
      sum((row) => row.states['no coverage']),
      percent(score),
      low === high ? '' : `${percent(low)} to ${percent(high)}`,
    ].join(' | ')} |`;
  };
  return [
    '| part | mutants | tried | killed | timed out | survived | no coverage | score | 95 % |',
    '|---|---|---|---|---|---|---|---|---|',
    ...rows.map((row) => line(row.stratum, [row])),
    line(
      '**all but board**',
      rows.filter(({ stratum }) => stratum !== 'board'),
    ),
    line('**all**', rows),
  ].join('\n');
};
