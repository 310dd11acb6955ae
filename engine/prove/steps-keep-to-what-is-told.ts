import { emptyCase, withFact } from '../case/case.ts';
import type { Issue } from '../faults/issue.ts';
import { wayOut } from '../faults/mend.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import type { FactName, ValueOf } from '../model/facts.ts';
import { CONTRADICTIONS } from '../steps/contradictions.ts';
import { takingOf } from '../steps/resolve.ts';
import { isOneLine } from './one-line.ts';

const MEND = 'add a when: that shuts this out, or word the step for both';

/** No step that a case is told contradicts what the case knows, whatever is told of it. */
export function* stepsKeepToWhatIsTold(known: Knowledge): Generator<Issue> {
  for (const remedy of known.remedies)
    for (const [index, step] of remedy.steps.entries())
      for (const { told, step: against, why, ...way } of CONTRADICTIONS) {
        if (!against(step)) continue;
        for (const [fact, values] of Object.entries(told)) {
          const wrong = [values].flat().filter((value) => {
            const on = withFact(emptyCase(), fact as FactName, value as ValueOf<FactName>);
            return takingOf(known, on, step) !== 'no';
          });
          if (wrong.length)
            yield {
              file: remedy.file,
              line: remedy.lineOf(['steps', index]),
              code: 'against-told',
              step: step.say,
              fact,
              told: wrong.map(String),
              why,
              mend: wayOut({ mend: MEND, ...way }, () => isOneLine(remedy.lineOf, ['steps', index], step)),
            };
        }
      }
}
