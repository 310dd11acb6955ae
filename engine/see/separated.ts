import type { Defect, Sign } from '../model/defect.ts';
import type { QuestionId } from '../model/ids.ts';
import { keysOf } from '../plain/entry-of.ts';

const signsOf = ({ signs }: Pick<Defect, 'signs'>): readonly (readonly [QuestionId, Sign | undefined])[] =>
  keysOf(signs).map((question) => [question, signs[question]]);

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
