import type { Issue } from '../issue.ts';
import type { Knowledge } from '../knowledge.ts';
import type { Remedy } from '../model/remedy.ts';
import { reached, STAGES, type Stage } from '../model/stage.ts';
import type { Step } from '../model/step.ts';

type Bench = { stage: Stage; dusty: boolean; tinted: boolean };

/** What each kind of step needs of the bench before it; undefined where nothing is missing. */
const missing = (step: Step, bench: Bench): string | undefined => {
  const hard = reached(bench.stage, 'recoatable') ? undefined : 'wait until recoatable before it';
  switch (step.kind) {
    case 'sand':
    case 'strip':
    case 'test-patch':
      return hard;
    case 'scrape':
      return step.tool === 'razor' || step.tool === 'card-scraper' ? hard : undefined;
    case 'coat':
      if (hard) return hard;
      if (bench.dusty) return 'wipe off the sanding dust before it';
      return step.product === 'tinted-same' && !bench.tinted ? 'mix the tint before it' : undefined;
    case 'wait':
      return step.until || step.hours ? undefined : 'say until: or hours:';
    case 'wipe':
    case 'look':
    case 'mix':
    case 'ask-professional':
      return undefined;
    default:
      step satisfies never;
      throw new Error(`no needs for the step ${JSON.stringify(step)}`);
  }
};

const after = (step: Step, bench: Bench): Bench => {
  switch (step.kind) {
    case 'wait':
      return step.until ? { ...bench, stage: later(bench.stage, step.until) } : bench;
    case 'sand':
      return { ...bench, dusty: true };
    case 'wipe':
      return { ...bench, dusty: false };
    case 'mix':
      return step.what === 'tint' ? { ...bench, tinted: true } : bench;
    case 'coat':
      return step.product === 'grain-filler' ? bench : { stage: 'wet', dusty: false, tinted: false };
    case 'strip':
      return { ...bench, stage: 'cured', dusty: true };
    default:
      return bench;
  }
};

const later = (a: Stage, b: Stage): Stage => (reached(a, b) ? a : b);

/** The earliest stage at which the remedy sends her to its steps. */
const begins = (remedy: Remedy): Stage => STAGES.find((stage) => remedy.now[stage].do === 'repair') ?? 'wet';

/** Every step's needs are met by what comes before it. */
export function* stepsAreInOrder(known: Knowledge): Generator<Issue> {
  for (const remedy of known.remedies) {
    let bench: Bench = { stage: begins(remedy), dusty: false, tinted: false };
    for (const [index, step] of remedy.steps.entries()) {
      const needs = missing(step, bench);
      if (needs)
        yield {
          file: remedy.file,
          line: remedy.lineOf(['steps', index]),
          code: 'step-order',
          step: step.say,
          needs,
        };
      bench = after(step, bench);
    }
  }
}
