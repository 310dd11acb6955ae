import { z } from 'zod';
import type { Issue } from '#engine/faults/issue.ts';
import { type Knowledge, knowledgeOf } from '#engine/knowledge/knowledge.ts';
import { visits } from '#engine/knowledge/tree.ts';
import { STAGES } from '#engine/model/stage.ts';
import { type ContentRoot, textOf } from './files.ts';
import { gradeOf, HIGHEST_GRADE } from './grade.ts';
import { readTable, type Table } from './table.ts';

export const HardWords = z.array(z.strictObject({ term: z.string().min(3), why: z.string().min(12) }));
type HardWord = z.infer<typeof HardWords>[number];
const FILE = 'content/hard-words.yaml';

/** Trade terms that count as one plain word each; no file is no term. */
export const hardWordsTable = (_known: Knowledge, root: ContentRoot): Table<readonly HardWord[]> =>
  textOf(root, FILE) === undefined
    ? { ok: true, value: [], lineOf: () => 1 }
    : readTable(knowledgeOf([]), root, FILE, Object.assign(HardWords, { shape: {} }));

type Text = { readonly file: string; readonly line: () => number; readonly text: string };

/** Everything that she must understand at once: questions, verdicts, and what to do now. */
function* textsOf(known: Knowledge): Generator<Text> {
  for (const entry of known.questions)
    yield { file: entry.file, line: () => entry.lineOf(['ask']), text: entry.ask };
  for (const entry of known.doings) {
    yield { file: entry.file, line: () => entry.lineOf(['verdict']), text: entry.verdict };
    yield { file: entry.file, line: () => entry.lineOf(['say']), text: entry.say };
  }
  for (const entry of known.remedies)
    for (const stage of STAGES)
      yield { file: entry.file, line: () => entry.lineOf(['now', stage, 'say']), text: entry.now[stage].say };
  for (const entry of known.defects)
    for (const { branch, path } of visits(entry.tree))
      if ('leave' in branch)
        yield { file: entry.file, line: () => entry.lineOf(['tree', ...path, 'leave']), text: branch.leave };
}

/** Texts that read too hard, and allowed terms that nothing needs any more. */
export function* tooHard(known: Knowledge, root: ContentRoot): Generator<Issue> {
  const table = hardWordsTable(known, root);
  if (!table.ok) return;
  const { value: terms, lineOf } = table;
  const texts = [...textsOf(known)];
  for (const { file, line, text } of texts) {
    const grade = gradeOf(text, terms);
    if (grade > HIGHEST_GRADE)
      yield { file, line: line(), code: 'too-hard', text, grade, most: HIGHEST_GRADE };
  }
  for (const [index, { term }] of terms.entries())
    if (!texts.some(({ text }) => new RegExp(`\\b${term}\\b`, 'i').test(text)))
      yield {
        file: FILE,
        line: lineOf([index]),
        code: 'needless-exception',
        what: `the exception for the term "${term}" is no longer needed`,
        mend: 'remove it',
      };
}
