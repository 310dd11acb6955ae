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
