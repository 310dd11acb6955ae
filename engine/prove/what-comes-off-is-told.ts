import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { type Family, NO_FILM } from '../model/family.ts';
import type { Step } from '../model/step.ts';
import { meansOf, toldBy } from '../rules/hazards.ts';
import { orderedIn } from './hazard-words.ts';
import { familiesByRemedy } from './hazards-are-cautioned.ts';
import { isOneLine } from './one-line.ts';

const TAKES_UP: readonly string[] = ['dry-cloth', 'mineral-spirits', 'naphtha'];
/** Words of what is still soft or wet as it comes off or out of the can. */
const SOFT =
  /\bslurry\b|\bsoft (oil|wax|finish|film|shellac|coat|below)\b|\brolls up soft\b|\bsticky\b|\bwax off\b|\bskin (out|off)\b|\boil(ed)? rag|\bfree of wax\b/i;

/** A repair of oil or wax alone: what its cloths and paper take off has no film that holds it. */
const takesUp = (families: readonly Family[], step: Step): string | undefined => {
  const [means] = meansOf(step);
  if (step.kind !== 'sand' && !(means && TAKES_UP.includes(means))) return undefined;
  const isOfNone = families.length > 0 && families.every((family) => NO_FILM.includes(family));
  return isOfNone ? families.join(', ') : undefined;
};

const saysSoft = (step: Step): string | undefined =>
  step.kind === 'wipe' || step.kind === 'sand' || step.kind === 'mix'
    ? orderedIn(step.say).match(SOFT)?.[0]
    : undefined;

/**
 * What comes off soft or wet heats up by itself where it is an oil: a cloth, paper or strainer that takes it up tells so,
 * and the stop on oily rags stands before the first of them and not at the coat that comes days later.
 */
export function* whatComesOffIsTold(known: Knowledge): Generator<Issue> {
  const lists = familiesByRemedy(known);
  for (const remedy of known.remedies) {
    const families = [...new Set((lists.get(remedy.id) ?? []).flat())];
    for (const [index, step] of remedy.steps.entries()) {
      const word = takesUp(families, step) ?? saysSoft(step);
      if (word && !toldBy(step).has('oily-cloth'))
        yield {
          file: remedy.file,
          line: remedy.lineOf(['steps', index]),
          code: 'comes-off-untold',
          step: step.say,
          isMix: step.kind === 'mix',
          word,
          isOneLine: isOneLine(remedy.lineOf, ['steps', index], step),
        };
    }
  }
}
