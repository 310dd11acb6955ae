/** Changes that no test can tell, with the reason: `test/mutation/engine-survivors.md`, a row each. */
import { readFileSync } from 'node:fs';
import type { Mutant } from './instrument.ts';

const FILE = new URL('../engine-survivors.md', import.meta.url);

type Row = { readonly file: string; readonly line: string; readonly was: string; readonly by: string };

/** A row is `| file | line | was | becomes | why |`; lines move, so one is known by what stands on it. */
export const reasonedRows = (): readonly Row[] =>
  readFileSync(FILE, 'utf8')
    .split('\n')
    .filter((row) => row.startsWith('| engine/'))
    .map((row) => {
      const [file = '', line = '', was = '', by = ''] = row
        .split(/(?<!\\)\|/)
        .slice(1, -1)
        .map((cell) => cell.trim().replaceAll('\\|', '|').replace(/^`|`$/g, ''));
      return { file, line, was, by };
    });

/** Whether a mutant that lives is one of those. */
export const isReasoned = (): ((mutant: Mutant) => boolean) => {
  const known = reasonedRows();
  return ({ file, line, was, by }) =>
    known.some(
      (row) =>
        row.file === file &&
        row.was === was &&
        row.by === by &&
        readFileSync(file, 'utf8').split('\n')[line - 1]?.includes(row.line),
    );
};
