import { emptyCase } from '../case.ts';
import type { Issue } from '../issue.ts';
import type { Knowledge } from '../knowledge.ts';
import type { Step } from '../model/step.ts';
import { meansOf, rulesForStep } from '../rules.ts';

const SOLVENTS = ['mineral-spirits', 'alcohol', 'naphtha', 'lacquer-retarder', 'fresh-oil'];
const SHELLACS = ['dewaxed-shellac', 'shellac-primer', 'oil'];

/** Steps that can hurt someone: dust, blades, solvents, strippers, bleach. */
const canHurt = (step: Step): boolean => {
  const means = meansOf(step) ?? '';
  return (
    step.kind === 'sand' ||
    step.kind === 'strip' ||
    means === 'wood-bleach' ||
    (step.kind === 'scrape' && means === 'razor') ||
    (step.kind === 'wipe' && SOLVENTS.includes(means)) ||
    (step.kind === 'coat' && SHELLACS.includes(means))
  );
};

/** A step that can hurt someone carries a caution even where nothing else is known. */
export function* stepsCarryCautions(known: Knowledge): Generator<Issue> {
  for (const remedy of known.remedies)
    for (const [index, step] of remedy.steps.entries())
      if (canHurt(step) && rulesForStep(known, emptyCase(), step).length === 0)
        yield {
          file: remedy.file,
          line: remedy.lineOf(['steps', index]),
          code: 'no-caution',
          step: step.say,
        };
}
