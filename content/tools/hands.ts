import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { Hands } from '#engine/model/hands.ts';
import type { ContentRoot } from './files.ts';
import { orThrow, readTable, type Table } from './table.ts';

/** How steps are done by hand, or every fault in the file. */
export const handsTable = (known: Knowledge, root: ContentRoot): Table<Hands> =>
  readTable(known, root, 'content/hands.yaml', Hands, () => []);

/** How steps are done by hand; throws every fault as a line `file:line: what; what to do`. */
export const readHands = (known: Knowledge, root: ContentRoot): Hands => orThrow(handsTable(known, root));
