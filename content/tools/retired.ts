import { z } from 'zod';
import type { Issue } from '#engine/faults/issue.ts';
import { faultOfReference, thereIn } from '#engine/faults/references.ts';
import { knowledgeOf } from '#engine/knowledge/knowledge.ts';
import { ENTRY_KINDS, ID_PATTERN } from '#engine/model/index.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';
import { STARTS } from '#engine/model/starts.ts';
import { isOneOf } from '#engine/plain/entry-of.ts';
import { type ContentRoot, textOf } from './files.ts';
import { readTable, type Table } from './table.ts';

const FILE = 'content/retired.yaml';
const MOVED = new RegExp(`^(${ENTRY_KINDS.join('|')})/${ID_PATTERN.source.slice(1)}`);

export const Retired = z.record(
  z
    .string()
    .regex(MOVED, `write kind/old-id, where the kind is one of ${ENTRY_KINDS.join(', ')}`)
    .register(STARTS, { starts: ENTRY_KINDS.map((kind) => `${kind}/`) }),
  z.string().regex(ID_PATTERN, 'write words in small letters joined by hyphens'),
);

/** Ids that moved or merged, or every fault in the shape of the file; no file is none. */
export const retiredTable = (root: ContentRoot): Table<Readonly<Record<string, string>>> =>
  textOf(root, FILE) === undefined
    ? { ok: true, value: {}, lineOf: () => 1 }
    : readTable(knowledgeOf([]), root, FILE, Object.assign(Retired, { shape: {} }));

/** Ids that are retired to what is not there, and ids that are retired and there as well. */
export const retiredFaults = (entries: readonly RawEntry[], root: ContentRoot): readonly Issue[] => {
  const table = retiredTable(root);
  if (!table.ok) return table.issues;
  const there = thereIn(entries, table.value);
  return Object.entries(table.value).flatMap(([moved, now]): Issue[] => {
    const [kind, old = ''] = moved.split('/');
    // The table was read by its schema, which names the kinds.
    if (!isOneOf(ENTRY_KINDS, kind)) return [];
    const where = { file: FILE, line: table.lineOf([moved], true) };
    if (there.idsOf(kind).has(old)) return [{ ...where, code: 'still-there', kind, id: old }];
    const fault = faultOfReference(there, kind, now);
    return fault ? [{ ...where, ...fault }] : [];
  });
};
