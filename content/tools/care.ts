import type { Issue } from '#engine/faults/issue.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { Care } from '#engine/model/care.ts';
import type { ContentRoot } from './files.ts';
import { gradeOf, HIGHEST_GRADE } from './grade.ts';
import { orThrow, readTable, type Table } from './table.ts';

const FILE = 'content/care.yaml';

/** The sentences of the care card, or every fault in them; a buyer must understand each at once. */
export const careTable = (known: Knowledge, root: ContentRoot): Table<Care> => {
  const table = readTable(known, root, FILE, Care);
  if (!table.ok) return table;
  const issues = Object.entries(table.value).flatMap(([part, rows]) =>
    Object.entries<{ readonly say: string }>(rows).flatMap(([name, { say }]): Issue[] => {
      const grade = gradeOf(say);
      const line = table.lineOf([part, Array.isArray(rows) ? Number(name) : name, 'say']);
      return grade > HIGHEST_GRADE
        ? [{ file: FILE, line, code: 'too-hard', text: say, grade, most: HIGHEST_GRADE }]
        : [];
    }),
  );
  return issues.length ? { ok: false, issues } : table;
};

/** The sentences of the care card; throws every fault as a line `file:line: what; what to do`. */
export const readCare = (known: Knowledge, root: ContentRoot): Care => orThrow(careTable(known, root));
