import type { Issue } from '../issue.ts';
import type { Knowledge } from '../knowledge.ts';
import type { Defect, Sign } from '../model/defect.ts';
import type { QuestionId } from '../model/ids.ts';

const signsOf = (defect: Pick<Defect, 'signs'>): [QuestionId, Sign][] =>
  Object.entries(defect.signs) as [QuestionId, Sign][];

/** A question whose answer tells two defects apart, with what each shows. */
export type Separation = {
  readonly question: QuestionId;
  readonly a: 'yes' | 'no';
  readonly b: 'yes' | 'no';
};

/** All questions that tell two defects apart. */
export const separatedBy = (a: Pick<Defect, 'signs'>, b: Pick<Defect, 'signs'>): Separation[] => {
  const other = new Map(signsOf(b));
  return signsOf(a).flatMap(([question, sign]): Separation[] => {
    const theirs = other.get(question);
    if (sign === 'yes' && theirs === 'no') return [{ question, a: sign, b: theirs }];
    if (sign === 'no' && theirs === 'yes') return [{ question, a: sign, b: theirs }];
    return [];
  });
};

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
