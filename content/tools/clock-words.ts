import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { ClockTable, type ClockWords, clockWordsOf, SAID_HANDS_OFF } from '#engine/model/clock-words.ts';
import type { ContentRoot } from './files.ts';
import { saidFaults } from './said-faults.ts';
import { orThrow, readTable, shapedTable, type Table } from './table.ts';

const FILE = 'content/clock.yaml';

/** The sentences of the clock, or every fault in them: each is understood at once, and none sends a hand to a wet film. */
export const clockTable = (known: Knowledge, root: ContentRoot): Table<ClockTable> => {
  const table = readTable(known, root, FILE, ClockTable);
  if (!table.ok) return table;
  const issues = saidFaults(FILE, clockWordsOf(table.value), SAID_HANDS_OFF, table.lineOf);
  return issues.length ? { ok: false, issues } : table;
};

/** The sentences of the clock; throws every fault of their shape as a line `file:line: what; what to do`. */
export const readClockWords = (root: ContentRoot): ClockWords =>
  clockWordsOf(orThrow(shapedTable(root, FILE, ClockTable)));
