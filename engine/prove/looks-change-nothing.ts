import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import type { Step } from '../model/step.ts';
import { laidOrOpenedIn } from './hazard-words.ts';

/** A look, a wait and a hand-over change nothing; wiping, sanding and scraping lay nothing and open no can. */
const LAY_NOTHING: readonly Step['kind'][] = ['look', 'wait', 'ask-professional', 'wipe', 'sand', 'scrape'];

/** Tried with a cloth or a strip that leaves nothing behind. */
const TRIED_ALONE: readonly string[] = ['mineral-spirits', 'naphtha', 'alcohol', 'thinner', 'tape'];

/** A cloth or a mist that lays on what it is wet with: it has the hazards of that by what it is wiped with. */
const LAID_WITH = ['fresh-oil', 'fresh-wax', 'clear-wax', 'lacquer-retarder', 'polish', 'alcohol'];
/** The field of a step that has its cautions, where nothing is laid by it. */
const laysNothing = (step: Step): string | undefined =>
  step.kind === 'test-patch'
    ? TRIED_ALONE.includes(step.tries)
      ? `tries: ${step.tries}`
      : undefined
    : LAY_NOTHING.includes(step.kind)
      ? `kind: ${step.kind}`
      : undefined;
const laysItself = (step: Step): boolean => step.kind === 'wipe' && LAID_WITH.includes(step.with);

/**
 * What lays a coat or opens a can is a step of its own kind, and so has the cautions of that kind: within a look, a
 * wait or a trial of the thinner nobody would be told of rags, vapor, mist or a hardener, whatever marks it bears.
 */
export function* looksChangeNothing(known: Knowledge): Generator<Issue> {
  for (const remedy of known.remedies)
    for (const [index, step] of remedy.steps.entries()) {
      const field = laysNothing(step);
      if (!field || laysItself(step)) continue;
      const word = laidOrOpenedIn(step.say);
      if (word)
        yield {
          file: remedy.file,
          line: remedy.lineOf(['steps', index]),
          code: 'look-lays',
          step: step.say,
          field,
          word,
        };
    }
}
