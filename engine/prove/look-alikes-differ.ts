import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { separatedBy } from '../see/separated.ts';

/** Every look-alike is told apart by at least one sign. */
export function* lookAlikesDiffer(known: Knowledge): Generator<Issue> {
  for (const defect of known.defects)
    for (const [index, other] of defect['look-alikes'].entries())
      if (separatedBy(defect, known.get('defect', other)).length === 0)
        yield {
          file: defect.file,
          line: defect.lineOf(['look-alikes', index]),
          code: 'look-alike-same',
          defect: defect.id,
          other,
        };
}
