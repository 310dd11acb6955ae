import type { Issue } from '#engine/faults/issue.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { PracticeWords } from '#engine/model/practice.ts';
import type { ContentRoot } from './files.ts';
import { gradeOf, HIGHEST_GRADE } from './grade.ts';
import { orThrow, readTable, type Table } from './table.ts';

const FILE = 'content/practice/words.yaml';

/** The words of practice boards, or every fault in them; a beginner must understand what was wrong at once. */
export const practiceTable = (known: Knowledge, root: ContentRoot): Table<PracticeWords> => {
  const table = readTable(known, root, FILE, PracticeWords, ({ shows }) =>
    Object.entries(shows).flatMap(([flaw, boards]) => [
      { kind: 'defect' as const, id: flaw, path: ['shows', flaw] },
      ...boards.flatMap((answers, index) =>
        Object.keys(answers).map((id) => ({
          kind: 'question' as const,
          id,
          path: ['shows', flaw, index, id],
        })),
      ),
    ]),
  );
  if (!table.ok) return table;
  const { temptations, waits } = table.value;
  const sentences = [
    ...temptations.map(({ says }, index) => ({ says, path: ['temptations', index, 'says'] })),
    ...Object.entries(waits).map(([id, { says }]) => ({ says, path: ['waits', id, 'says'] })),
  ];
  const issues = sentences.flatMap(({ says, path }): Issue[] => {
    const grade = gradeOf(says);
    return grade > HIGHEST_GRADE
      ? [
          {
            file: FILE,
            line: table.lineOf(path),
            code: 'too-hard',
            text: says,
            grade,
            most: HIGHEST_GRADE,
          },
        ]
      : [];
  });
  return issues.length ? { ok: false, issues } : table;
};

/** The words of practice boards; throws every fault as a line `file:line: what; what to do`. */
export const readPractice = (known: Knowledge, root: ContentRoot): PracticeWords =>
  orThrow(practiceTable(known, root));
