import type { z } from 'zod';
import type { Fault, Issue } from '#engine/faults/issue.ts';
import { say } from '#engine/faults/say.ts';
import { schemaFaults } from '#engine/faults/schema-faults.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { type EntryKind, FOLDERS } from '#engine/model/index.ts';
import type { LineOf } from '#engine/model/knowledge.ts';
import { nearestId } from '#engine/plain/nearest.ts';
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
type Row = { readonly grade: string; readonly source?: string; readonly say?: string; readonly why?: string };

const deadLink = (known: Knowledge, kind: EntryKind, id: string): Fault => {
  const there = known[FOLDERS[kind]] as readonly { id: string }[];
  const nearest = nearestId(
    id,
    there.map((entry) => entry.id),
  );
  const title = kind === 'source' && nearest ? known.get('source', nearest).title : undefined;
  return { code: 'dead-link', kind, id, nearest, title };
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
  // The reader of front matter knows the lines; the fence that it needs stands one line above the first.
  const { data, lineOf, broken } = readTableText(root, file);
  const lineAt: LineOf = (path, atKey) => Math.max(1, lineOf(path, atKey) - 1);
  const issues: Issue[] = [];
  const tell = (line: number, fault: Fault) => issues.push({ file, line, ...fault });
  if (broken) {
    tell(Math.max(1, broken.line - 1), broken.fault);
    return { ok: false, issues };
  }
  const parsed = shapedOnce(schema, data ?? {});
  if (!parsed.success) {
    for (const { path, atKey, fault } of schemaFaults(parsed.error, data ?? {}, schema))
      tell(lineAt(path, atKey), fault);
    return { ok: false, issues };
  }
  const links = [...mentions(parsed.data)];
  for (const [row, path] of rowsIn(parsed.data)) {
    if (row.source) links.push({ kind: 'source', id: row.source, path: [...path, 'source'] });
    else if (row.grade === 'published' || row.grade === 'from-memory')
      tell(lineAt(path), {
        code: 'no-source',
        says: row.say ?? row.why ?? path.map(String).join('.'),
        grade: row.grade,
      });
  }
  for (const { kind, id, path } of links)
    if (!known.has(kind, id)) tell(lineAt(path), deadLink(known, kind, id));
  issues.sort((one, two) => one.line - two.line);
  return issues.length ? { ok: false, issues } : { ok: true, value: parsed.data, lineOf: lineAt };
};

/** The table, for those who can not go on without it; throws every fault as a line. */
export const orThrow = <T>(table: Table<T>): T => {
  if (!table.ok) throw new Error(table.issues.map(say).join('\n'));
  return table.value;
};
