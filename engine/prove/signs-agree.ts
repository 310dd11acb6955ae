import { answerOf } from '../case/answers.ts';
import { emptyCase, withFact } from '../case/case.ts';
import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { isHandover, visits } from '../knowledge/tree.ts';
import type { QuestionId } from '../model/ids.ts';

/** What the kind of top coat alone tells is the sign of every defect that is met on such kinds only. */
function* signsFollowTheFamilies(known: Knowledge): Generator<Issue> {
  for (const { file, lineOf, families, signs } of known.defects)
    for (const [question, sign] of Object.entries(signs)) {
      if (sign === undefined) continue;
      const answers = new Set(
        families.map((family) => answerOf(known, withFact(emptyCase(), 'family', family), question)),
      );
      if (answers.has(undefined)) continue;
      const [only] = answers;
      const agrees = answers.size === 1 ? sign === only : sign !== 'yes' && sign !== 'no';
      if (!agrees)
        yield {
          file,
          line: lineOf(['signs', question]),
          code: 'sign-differs',
          by: 'families',
          question,
          sign,
          tell: only !== undefined && answers.size === 1 ? only : 'now yes, now no',
        };
    }
}

/** A tree hands over to a defect only on an answer that this defect shows. */
function* handoversAgreeWithSigns(known: Knowledge): Generator<Issue> {
  for (const { file, lineOf, tree } of known.defects)
    for (const { branch, path, answers } of visits(tree)) {
      if (!isHandover(branch)) continue;
      const { signs } = known.get('defect', branch.defect);
      for (const { question, answer } of answers) {
        const sign = signs[question as QuestionId];
        if ((sign === 'yes' || sign === 'no') && sign !== answer)
          yield {
            file,
            line: lineOf(['tree', ...path]),
            code: 'sign-differs',
            by: 'handover',
            question,
            sign,
            to: branch.defect,
            answer,
          };
      }
    }
}

/**
 * Signs agree with the kinds of top coat that a flaw is met on, and with the answers on which trees hand over to it.
 */
export function* signsAgree(known: Knowledge): Generator<Issue> {
  yield* signsFollowTheFamilies(known);
  yield* handoversAgreeWithSigns(known);
}
