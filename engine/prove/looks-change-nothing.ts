import type { Issue } from '../issue.ts';
import type { Knowledge } from '../knowledge.ts';
import type { Step } from '../model/step.ts';
import { laidOrOpenedIn } from './hazard-words.ts';

/** A look, a wait and a hand-over change nothing; wiping, sanding and scraping lay nothing and open no can. */
const LAY_NOTHING: readonly Step['kind'][] = ['look', 'wait', 'ask-professional', 'wipe', 'sand', 'scrape'];

/** A cloth or a mist that lays on what it is wet with: it has the hazards of that by what it is wiped with. */
const LAID_WITH = ['fresh-oil', 'fresh-wax', 'clear-wax', 'lacquer-retarder', 'polish', 'alcohol'];
const laysItself = (step: Step): boolean => step.kind === 'wipe' && LAID_WITH.includes(step.with);

/**
 * What lays a coat or opens a can is a step of its own kind, and so has the cautions of that kind: within a look or a
 * wait nobody would be told of rags, vapor, mist or a hardener, whatever marks it bears.
 */
export function* looksChangeNothing(known: Knowledge): Generator<Issue> {
  for (const remedy of known.remedies)
    for (const [index, step] of remedy.steps.entries()) {
      if (!LAY_NOTHING.includes(step.kind) || laysItself(step)) continue;
      const word = laidOrOpenedIn(step.say);
      if (word)
        yield {
          file: remedy.file,
          line: remedy.lineOf(['steps', index]),
          code: 'look-lays',
          step: step.say,
          kind: step.kind,
          word,
        };
    }
}
