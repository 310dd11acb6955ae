import { answerOf } from '../case/answers.ts';
import { emptyCase, withAnswer } from '../case/case.ts';
import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { isAsk, visits } from '../knowledge/tree.ts';

/** No path asks what it has asked, or what its answers already tell; no question is without consequence. */
export function* noQuestionTwice(known: Knowledge): Generator<Issue> {
  for (const defect of known.defects) {
    for (const { branch, path, answers } of visits(defect.tree)) {
      if (!isAsk(branch)) continue;
      const where = () => ({ file: defect.file, line: defect.lineOf(['tree', ...path, 'ask']) });
      const asked = answers.find((one) => one.question === branch.ask);
      if (asked) {
        yield { ...where(), code: 'asked-twice', question: branch.ask, answer: asked.answer };
        continue;
      }
      const on = answers.reduce((sum, one) => withAnswer(sum, one.question, one.answer), emptyCase());
      const answer = answerOf(known, on, branch.ask);
      if (answer) yield { ...where(), code: 'known-already', question: branch.ask, answer };
      if (JSON.stringify(branch.yes) === JSON.stringify(branch.no))
        yield { ...where(), code: 'same-both-ways', question: branch.ask };
    }
  }
}
