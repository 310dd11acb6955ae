import { type Knowledge, knowledgeOf } from '#engine/knowledge/knowledge.ts';
import { Calls } from '#engine/model/calls.ts';
import type { ContentRoot } from './files.ts';
import { orThrow, readTable, type Table } from './table.ts';

/** Whom to call where, or every fault in it. What it rests on stands as claims in the rule `emergency`. */
export const callsTable = (known: Knowledge, root: ContentRoot): Table<Calls> =>
  readTable(known, root, 'content/calls.yaml', Calls);

/** Whom to call where; throws every fault as a line `file:line: what; what to do`. */
export const readCalls = (root: ContentRoot): Calls => orThrow(callsTable(knowledgeOf([]), root));
