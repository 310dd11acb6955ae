/** The open data set: whole, linked, and described by its schema. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { FOLDERS, SCHEMAS } from '#engine/model/index.ts';
import { ENTRY_KINDS } from '#engine/model/kinds.ts';
import { known } from '../content/real/knowledge.ts';

type Entry = { readonly id: string } & Record<string, unknown>;

const read = (name: string) => JSON.parse(readFileSync(`dist/data/${name}`, 'utf8'));
const data = read('halfdry.json') as Record<string, readonly Entry[]>;

it.each(ENTRY_KINDS)('holds every %s, in the form that its schema asks for', (kind) => {
  const entries = data[FOLDERS[kind]] ?? [];
  expect(entries.map(({ id }) => id)).toEqual(known[FOLDERS[kind]].map(({ id }) => id));
  for (const { id, ...entry } of entries) expect(SCHEMAS[kind].safeParse(entry).error, id).toBeUndefined();
});

it('says its version, the day of the last change, and its license', () => {
  expect(data).toMatchObject({ version: 1, license: 'CC-BY-4.0' });
  expect(data['changed']).toMatch(/^20\d\d-\d\d-\d\d$/);
});

it('has a schema in which every reference resolves', () => {
  const schema = read('schema.json') as Record<string, unknown>;
  const references = [...JSON.stringify(schema).matchAll(/"\$ref":"#([^"]*)"/g)].map(([, path = '']) => path);
  expect(references.length).toBeGreaterThan(0);
  const resolve = (path: string) =>
    path
      .split('/')
      .filter(Boolean)
      .reduce<unknown>(
        (at, key) => (at as Record<string, unknown> | undefined)?.[key.replaceAll('~1', '/')],
        schema,
      );
  expect(references.filter((path) => resolve(path) === undefined)).toEqual([]);
});
