import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';

/** Every defect has a board, and every question answered by looking has its pair, or says why it has none. */
export function* boardsAreThere(known: Knowledge): Generator<Issue> {
  for (const defect of known.defects)
    if (defect.boards.length === 0)
      yield { file: defect.file, line: 1, code: 'no-board', kind: 'defect', id: defect.id };
  for (const question of known.questions) {
    const why = question['no-boards'];
    if (question.boards && why !== undefined)
      yield {
        file: question.file,
        line: question.lineOf(['no-boards']),
        code: 'needless-exception',
        what: `"${question.id}" has boards: now, so the reason after "no-boards:" is not needed`,
        mend: 'delete the line no-boards:',
      };
    if (question.by === 'look' && !question.boards && why === undefined)
      yield { file: question.file, line: 1, code: 'no-board', kind: 'question', id: question.id };
  }
}
