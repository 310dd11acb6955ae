/** What no test can tell is reasoned of lines that are there: one that was changed or moved is reasoned anew. */
import { existsSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { reasonedRows } from './mutation/engine/reasoned.ts';

it('names each change by what stands on a line of its file', () => {
  const rows = reasonedRows();
  expect(rows.length).toBeGreaterThan(10);
  const lost = rows.filter(({ file, line, was }) => {
    const lines = existsSync(file) ? readFileSync(file, 'utf8').split('\n') : [];
    return !lines.some((one) => one.includes(line) && one.includes(was));
  });
  expect(lost).toEqual([]);
});
