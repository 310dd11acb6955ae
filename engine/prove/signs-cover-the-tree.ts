import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { isAsk, visits } from '../knowledge/tree.ts';

/** What a tree asks has a sign, so that the search for the defect and the tree speak of the same things. */
export function* signsCoverTheTree(known: Knowledge): Generator<Issue> {
  for (const defect of known.defects)
    for (const { branch, path } of visits(defect.tree))
      if (isAsk(branch) && !(branch.ask in defect.signs))
        yield {
          file: defect.file,
          line: defect.lineOf(['tree', ...path, 'ask']),
          code: 'sign-unasked',
          question: branch.ask,
        };
}
