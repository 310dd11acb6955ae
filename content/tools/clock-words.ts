import type { Issue } from '#engine/faults/issue.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { ClockTable, type ClockWords, clockWordsOf, SAID_HANDS_OFF } from '#engine/model/clock-words.ts';
import { touchOrdered } from '#engine/prove/touch-words.ts';
import type { ContentRoot } from './files.ts';
import { gradeOf, HIGHEST_GRADE } from './grade.ts';
import { orThrow, readTable, shapedTable, type Table } from './table.ts';

const FILE = 'content/clock.yaml';

/** The sentences of the clock, or every fault in them: each is understood at once, and none sends a hand to a wet film. */
export const clockTable = (known: Knowledge, root: ContentRoot): Table<ClockTable> => {
  const table = readTable(known, root, FILE, ClockTable);
  if (!table.ok) return table;
  const said = Object.entries(clockWordsOf(table.value)).flatMap(([group, rows]) =>
    Object.entries<string>(rows).map(([id, text]) => ({ group, id, text })),
  );
  const issues = said.flatMap(({ group, id, text }): Issue[] => {
    const at = { file: FILE, line: table.lineOf([group, id]) };
    const grade = gradeOf(text);
    const isOff = SAID_HANDS_OFF.some(([inGroup, called]) => inGroup === group && called === id);
    const order = isOff ? touchOrdered(text) : undefined;
    return [
      ...(grade > HIGHEST_GRADE
        ? [{ ...at, code: 'too-hard' as const, text, grade, most: HIGHEST_GRADE }]
        : []),
      ...(order
        ? [
            {
              ...at,
              code: 'touch-ordered' as const,
              order,
              where: 'where hands are off the film',
              becomes: 'not' as const,
            },
          ]
        : []),
    ];
  });
  return issues.length ? { ok: false, issues } : table;
};

/** The sentences of the clock; throws every fault of their shape as a line `file:line: what; what to do`. */
export const readClockWords = (root: ContentRoot): ClockWords =>
  clockWordsOf(orThrow(shapedTable(root, FILE, ClockTable)));
