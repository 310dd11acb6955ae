import { factsOfStep, surelyOf } from '../hazards.ts';
import type { Issue } from '../issue.ts';
import type { Knowledge } from '../knowledge.ts';
import type { Step } from '../model/step.ts';
import { hazardsSaid, orderedIn } from './hazard-words.ts';

/** Beside an order to spray: it is left to her. */
const OR_BY_HAND = /\bor (lay|brush|wipe|pad)\b/i;

/** Means whose words stand in a step without being the whole of it are told by the step's kind. */
const doesOf = (step: Step): ReadonlySet<string> => new Set(factsOfStep(step).keys());

/** A step whose words tell of a hazard has it: by its kind, by what it uses, or by a mark under `does`. */
export function* stepsTellWhatTheyDo(known: Knowledge): Generator<Issue> {
  for (const remedy of known.remedies)
    for (const [index, step] of remedy.steps.entries()) {
      const does = doesOf(step);
      const said = orderedIn(step.say);
      const [spray] = said.match(/^(outdoors, )?spray\b/i) ?? [];
      if (spray && !OR_BY_HAND.test(said) && !surelyOf(step).has('mist'))
        yield {
          file: remedy.file,
          line: remedy.lineOf(['steps', index]),
          code: 'hazard-untold',
          step: step.say,
          hazard: 'mist',
          word: spray,
        };
      for (const [hazard, word] of hazardsSaid(step.say)) {
        if (!does.has(hazard))
          yield {
            file: remedy.file,
            line: remedy.lineOf(['steps', index]),
            code: 'hazard-untold',
            step: step.say,
            hazard,
            word,
          };
      }
    }
}
