import type { z } from 'zod';
import type { Fault, Issue } from '#engine/faults/issue.ts';
import { faultOfGround, faultOfReference, type There } from '#engine/faults/references.ts';
import { say } from '#engine/faults/say.ts';
import { schemaFaults } from '#engine/faults/schema-faults.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { type EntryKind, FOLDERS } from '#engine/model/index.ts';
import type { LineOf } from '#engine/model/knowledge.ts';
import type { Grade } from '#engine/model/source.ts';
import type { ContentRoot } from './files.ts';
import { readTableText } from './read.ts';

type Schema<T> = z.ZodType<T> & { readonly shape: Readonly<Record<string, unknown>> };

/** A table that was read, or every fault of it with its line. */
export type Table<T> =
  | { readonly ok: true; readonly value: T; readonly lineOf: LineOf }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** An id in a table, and where it stands. */
export type Mention = {
  readonly kind: EntryKind;
  readonly id: string;
  readonly path: readonly PropertyKey[];
};

/** What a schema makes of a text that is parsed already, once for all who read the table. */
const shaped = new WeakMap<object, WeakMap<object, z.ZodSafeParseResult<unknown>>>();

const shapedOnce = <T>(schema: Schema<T>, data: unknown): z.ZodSafeParseResult<T> => {
  if (typeof data !== 'object' || data === null) return schema.safeParse(data);
  const bySchema = shaped.get(data) ?? new WeakMap<object, z.ZodSafeParseResult<unknown>>();
  shaped.set(data, bySchema);
  const made = (bySchema.get(schema) as z.ZodSafeParseResult<T> | undefined) ?? schema.safeParse(data);
  bySchema.set(schema, made);
  return made;
};

/** The sources and lacking sources of every row, wherever it stands: a row is what has a grade. */
function* rowsIn(
  value: unknown,
  path: readonly PropertyKey[] = [],
): Generator<[Row, readonly PropertyKey[]]> {
  if (typeof value !== 'object' || value === null) return;
  if ('grade' in value) yield [value as Row, path];
  const inner = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
  for (const [key, item] of inner) yield* rowsIn(item, [...path, key]);
}
type Row = { readonly grade: Grade; readonly source?: string; readonly say?: string; readonly why?: string };

/** All sources that are named in the data of a table, read or not yet looked at. */
export const sourcesIn = (data: unknown): readonly string[] => {
  if (typeof data !== 'object' || data === null) return [];
  return Object.entries(data).flatMap(([key, value]) =>
    key === 'source' && typeof value === 'string' ? [value] : sourcesIn(value),
  );
};

/** What links lead to from outside of the entries. */
export const thereOf = (known: Knowledge): There => ({
  idsOf: (kind) => new Set((known[FOLDERS[kind]] as readonly { id: string }[]).map(({ id }) => id)),
  titleOf: (source) => known.get('source', source).title,
  retired: known.retired,
});

/** A YAML file of tables against its schema alone. */
export const shapedTable = <T>(root: ContentRoot, file: string, schema: Schema<T>): Table<T> => {
  // The reader of front matter knows the lines; the fence that it needs stands one line above the first.
  const { data, lineOf, broken } = readTableText(root, file);
  const lineAt: LineOf = (path, atKey) => Math.max(1, lineOf(path, atKey) - 1);
  if (broken) return { ok: false, issues: [{ file, line: Math.max(1, broken.line - 1), ...broken.fault }] };
  const parsed = shapedOnce(schema, data ?? {});
  if (parsed.success) return { ok: true, value: parsed.data, lineOf: lineAt };
  const issues = schemaFaults(parsed.error, data ?? {}, schema).map(
    ({ path, atKey, fault }): Issue => ({ file, line: lineAt(path, atKey), ...fault }),
  );
  return { ok: false, issues };
};

/**
 * A YAML file of tables against its schema and the knowledge: every id in it must be there, and every row that is
 * published or remembered must name its source. All faults come back at once.
 */
export const readTable = <T>(
  known: Knowledge,
  root: ContentRoot,
  file: string,
  schema: Schema<T>,
  mentions: (value: T) => readonly Mention[] = () => [],
): Table<T> => {
  const table = shapedTable(root, file, schema);
  if (!table.ok) return table;
  const { value, lineOf } = table;
  const issues: Issue[] = [];
  const tell = (path: readonly PropertyKey[], fault: Fault | undefined) => {
    if (fault) issues.push({ file, line: lineOf(path), ...fault });
  };
  const links = [...mentions(value)];
  for (const [row, path] of rowsIn(value)) {
    if (row.source) links.push({ kind: 'source', id: row.source, path: [...path, 'source'] });
    tell(path, faultOfGround(row.say ?? row.why ?? path.map(String).join('.'), row));
  }
  for (const { kind, id, path } of links)
    tell(path, known.has(kind, id) ? undefined : faultOfReference(thereOf(known), kind, id));
  issues.sort((one, two) => one.line - two.line);
  return issues.length ? { ok: false, issues } : table;
};

/** The table, for those who can not go on without it; throws every fault as a line. */
export const orThrow = <T>(table: Table<T>): T => {
  if (!table.ok) throw new Error(table.issues.map(say).join('\n'));
  return table.value;
};
