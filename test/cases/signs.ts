import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { isAsk, visits } from '#engine/knowledge/tree.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import { advise, caseOf } from './advise.ts';
import type { TroubleCase } from './case-file.ts';

/**
 * What a case shows, against the signs of the defect that its walk ends at: every plain contradiction. What the
 * tree itself asks is left out: an answer against the sign leads there to its own end.
 */
export const signsAgainstCases = (known: Knowledge, cases: readonly TroubleCase[]): string[] =>
  cases.flatMap((one) => {
    const ends = new Set(advise(known, one, one.defect, caseOf(one)).leaves.map((leaf) => leaf.of));
    const [end] = ends;
    if (ends.size !== 1 || !end) return [];
    const { signs, tree } = known.get('defect', end);
    const asked = new Set(
      [...visits(tree)].flatMap(({ branch }) => (isAsk(branch) ? [branch.ask as string] : [])),
    );
    return [
      ...one.yes.filter((question) => signs[question as QuestionId] === 'no'),
      ...one.no.filter((question) => signs[question as QuestionId] === 'yes'),
    ]
      .filter((question) => !asked.has(question))
      .map(
        (question) =>
          `${one.file}: ${one.title}: ${end} shows ${signs[question as QuestionId]} for ${question}`,
      );
  });
