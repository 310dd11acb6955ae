import { type Case, withFact } from '../case/case.ts';
import type { Issue } from '../faults/issue.ts';
import { above, type WayOut, wayOut } from '../faults/mend.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { FACTS } from '../model/facts.ts';
import { FAMILIES } from '../model/family.ts';
import type { Remedy } from '../model/remedy.ts';
import { reached, STAGES, type Stage } from '../model/stage.ts';
import type { Step } from '../model/step.ts';
import { LEAVE_OUT } from '../steps/contradictions.ts';
import { takingOf } from '../steps/resolve.ts';
import { isOneLine } from './one-line.ts';

/** What lies on the piece: `rest` is acid or stripper that has to be washed off before dust or a coat. */
type Bench = { stage: Stage; dusty: boolean; tinted: boolean; rest: 'acid' | 'stripper' | undefined };

/** What a step does too early, and the step that has to come before it. */
type Lack = WayOut & { readonly what: string };
const SOFT: Lack = {
  what: 'comes on a film that has not dried',
  mend: above('kind: wait, until: recoatable'),
};

/** What each kind of step needs of the bench before it; undefined where nothing is missing. */
const missing = (step: Step, bench: Bench): Lack | undefined => {
  const hard = reached(bench.stage, 'recoatable') ? undefined : SOFT;
  if (bench.rest && (step.kind === 'sand' || step.kind === 'coat'))
    return bench.rest === 'acid'
      ? {
          what: 'comes over acid, whose crystals must not become dust',
          mend: above('kind: wipe, with: damp-cloth, of: wood-bleach', ' that rinses it off'),
        }
      : {
          what: 'comes over stripper',
          mend: above('kind: wipe, with: mineral-spirits', ' that washes it off'),
        };
  if (bench.rest === 'stripper' && step.kind === 'wipe' && step.with === 'vacuum')
    return {
      what: 'brings a vacuum, whose motor lights vapor, to stripper',
      mend: above('kind: wipe, with: mineral-spirits', ' that washes it off'),
    };
  switch (step.kind) {
    case 'sand':
    case 'strip':
    case 'test-patch':
      return hard;
    case 'scrape':
      return step.tool === 'razor' || step.tool === 'card-scraper' ? hard : undefined;
    case 'coat':
      if (hard) return hard;
      if (bench.dusty)
        return {
          what: 'goes on over sanding dust',
          mend: above('kind: wipe, with: vacuum', ' that takes the dust off'),
        };
      return step.product === 'tinted-same' && !bench.tinted
        ? { what: 'lays a tinted coat that nothing has mixed', mend: above('kind: mix, what: tint') }
        : undefined;
    case 'wait':
      return step.until || step.hours
        ? undefined
        : { what: 'does not say how long', mark: 'until: recoatable' };
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
      if (step.with === 'wood-bleach') return { ...bench, dusty: false, rest: 'acid' };
      return { ...bench, dusty: false, rest: washes(step, bench.rest) ? undefined : bench.rest };
    case 'mix':
      return step.what === 'tint' ? { ...bench, tinted: true } : bench;
    case 'coat':
      return step.product === 'grain-filler'
        ? bench
        : { ...bench, stage: 'wet', dusty: false, tinted: false };
    case 'strip':
      return { ...bench, stage: 'cured', dusty: true, ...(usesStripper(step) && { rest: 'stripper' }) };
    default:
      return bench;
  }
};

const later = (a: Stage, b: Stage): Stage => (reached(a, b) ? a : b);

/** The earliest stage at which the remedy sends her to its steps. */
const begins = (remedy: Remedy): Stage => STAGES.find((stage) => remedy.now[stage].do === 'repair') ?? 'wet';

const usesStripper = (step: Step): boolean =>
  (step.kind === 'strip' && step.with === 'stripper') || (step.does?.includes('stripper') ?? false);

const WASHES: Readonly<Record<string, readonly string[]>> = {
  acid: ['damp-cloth', 'soapy-water'],
  stripper: ['damp-cloth', 'soapy-water', 'mineral-spirits', 'alcohol'],
};
/** Acid is rinsed off by a step that says so: paint, which is never bleached, is then spared the rinse as well. */
const washes = (step: Step & { kind: 'wipe' }, rest: Bench['rest']): boolean =>
  rest !== undefined &&
  (WASHES[rest]?.includes(step.with) ?? false) &&
  (rest !== 'acid' || step.of === 'wood-bleach');

/** Steps that stand in for one another by the part of the piece are never all taken, so the part is told. */
const partsOf = (remedy: Remedy): readonly Case[] =>
  remedy.steps.some(({ except }) => except?.['part'])
    ? FACTS.part.values.map((part) => withFact({}, 'part', part))
    : [{}];

/** Every kind of top coat and part of the piece, alone and with each single fact that leaves one of the steps out. */
const casesOf = (remedy: Remedy): readonly Case[] => {
  const out = LEAVE_OUT.filter(({ step }) => remedy.steps.some(step)).map(({ told }) => told);
  return FAMILIES.flatMap((family) =>
    partsOf(remedy).flatMap((part) =>
      [{}, ...out].map((told): Case => withFact({ ...part, ...told }, 'family', family)),
    ),
  );
};

/** Every step's needs are met by what comes before it, whichever kind of top coat it is and whatever is left out. */
export function* stepsAreInOrder(known: Knowledge): Generator<Issue> {
  for (const remedy of known.remedies) {
    const told = new Set<number>();
    for (const on of casesOf(remedy)) {
      let bench: Bench = { stage: begins(remedy), dusty: false, tinted: false, rest: undefined };
      for (const [index, step] of remedy.steps.entries()) {
        if (takingOf(known, on, step) === 'no') continue;
        const needs = missing(step, bench);
        if (needs && !told.has(index)) {
          told.add(index);
          yield {
            file: remedy.file,
            line: remedy.lineOf(['steps', index]),
            code: 'step-order',
            step: step.say,
            what: needs.what,
            mend: wayOut(needs, () => isOneLine(remedy.lineOf, ['steps', index], step)),
          };
        }
        bench = after(step, bench);
      }
    }
  }
}
