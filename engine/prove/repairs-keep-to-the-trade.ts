import { holds } from '../case/condition.ts';
import type { Issue } from '../faults/issue.ts';
import { above, below } from '../faults/mend.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { FAMILIES, type Family } from '../model/family.ts';
import type { Step } from '../model/step.ts';
import { GROUND_IS_SPARED } from './ground-is-spared.ts';
import { type Held, toldOfStep } from './held.ts';
import { WORK_IN_ORDER } from './work-in-order.ts';

const HARD_WORK: readonly Step['kind'][] = ['sand', 'scrape', 'strip', 'coat', 'test-patch'];
/** Laid thin and rubbed in or wiped off, so that what comes next is part of the same work. */
const NO_FILM = ['wax', 'oil', 'grain-filler'];
const CLEAR = ['same', 'same-in-gloss', 'tinted-same', 'water-based', 'mist-of-same'];
/** Hours after which lacquer may be rubbed out: a week. */
const A_WEEK = 168;

/** A coat dries before anything else is done to it. */
const coatsAreWaitedFor: Held = ({ steps }) =>
  steps.flatMap((step, index) => {
    if (step.kind !== 'coat' || NO_FILM.includes(step.product)) return [];
    const next = steps[index + 1];
    // Two coats for other kinds of top coat, or other parts of the piece: one of them is laid.
    const forSome = step.when ?? step.except;
    if (next?.kind === 'wait' || (forSome && next?.when && next.kind === 'coat')) return [];
    const what = next ? `"${next.say}" comes right after a coat` : 'nothing comes after the last coat';
    return next
      ? [{ index: index + 1, what, mend: above('kind: wait, until: recoatable') }]
      : [{ index, what, mend: below('kind: wait, until: cured') }];
  });

/**
 * Whoever took the stage for later than it is, meets a wait before anything cuts, wets or covers the film; only a
 * coat that never hardens is stripped without one.
 */
const repairsBeginByWaiting: Held = ({ steps }) => {
  const index = steps.findIndex(
    (step) => HARD_WORK.includes(step.kind) || (step.kind === 'wipe' && step.with !== 'dry-cloth'),
  );
  const first = steps[index];
  const waited = steps.slice(0, Math.max(index, 0)).some(({ kind }) => kind === 'wait');
  return first && !waited && first.kind !== 'strip'
    ? [
        {
          index,
          what: `the repair begins with "${first.say}"`,
          mend: above('kind: wait, until: recoatable', ', since the film may be softer than it seems'),
        },
      ]
    : [];
};

/** The most thinner that a kind of top coat takes, in parts in a hundred. */
const mostThinner = (say: string, family: Family): number => {
  if (family === 'water-based' || family === 'water-lacquer') return 10;
  if (family === 'oil-based' || family === 'wipe-on') return /\blast\b/i.test(say) ? 25 : 10;
  return 25;
};

/**
 * Extender to 15 %, water-based finish thinned to 10 % (a dealer's sheet, instructions for a waterborne clear, undated);
 * varnish to 10 % (common practice), to 25 % for a last coat (Flexner, 'The 7 myths of polyurethane', 2008).
 */
const mixesStayWithinTheTrade: Held = ({ steps }) =>
  steps.flatMap((step, index) => {
    if (step.kind !== 'mix' || !step.percent || step.what === 'tint') return [];
    const { what, when, say, percent } = step;
    const families = FAMILIES.filter(
      (family) => !when || holds(when, (fact) => (fact === 'family' ? family : undefined)) !== 'no',
    );
    const bears = (family: Family) => (what === 'extender' ? 15 : mostThinner(say, family));
    const [least] = [...families].sort((one, other) => bears(one) - bears(other));
    if (!least) return [];
    const [most, coat] = [bears(least), what === 'extender' ? 'a top coat' : `a top coat that is ${least}`];
    return percent[1] > most
      ? [
          {
            index,
            what: `this step ${what === 'extender' ? 'adds extender' : 'thins'} up to ${percent[1]} %, and ${coat} bears ${most} % at most`,
            mend: `write ${most} or less as the second number after "percent:"`,
          },
        ]
      : [];
  });

/**
 * Varnish is rubbed and polished two to six weeks on (Van Dyke 2021; Dresdner), lacquer after a week (common practice):
 * a film is cured, or a week old, before polish.
 */
const polishWaitsForCure: Held = ({ steps }) => {
  const index = steps.findIndex((step) => step.kind === 'wipe' && step.with === 'polish');
  const cured = steps
    .slice(0, Math.max(index, 0))
    .some((step) => step.kind === 'wait' && (step.until === 'cured' || (step.hours?.[0] ?? 0) >= A_WEEK));
  return index >= 0 && !cured
    ? [
        {
          index,
          what: 'the film is polished before it is cured',
          mend: above('kind: wait, until: cured'),
        },
      ]
    : [];
};

/** Common practice, no source: 300 grit or finer between clear coats. A stripped piece begins afresh. */
const sandedFineBetweenCoats: Held = ({ steps }) => {
  let last: { grit: number; index: number } | undefined;
  let stripped = false;
  return steps.flatMap((step, index) => {
    if (step.kind === 'strip') stripped = true;
    if (step.kind === 'sand') last = { grit: step.grit, index };
    if (step.kind !== 'coat') return [];
    const [sanded, bare] = [last, stripped];
    last = undefined;
    stripped = false;
    return CLEAR.includes(step.product) && sanded && sanded.grit < 320 && !bare
      ? [
          {
            index: sanded.index,
            what: `P${sanded.grit} is the last paper before a clear coat`,
            mend: below('kind: sand, grit: 320'),
          },
        ]
      : [];
  });
};

const HELD: readonly Held[] = [
  coatsAreWaitedFor,
  repairsBeginByWaiting,
  mixesStayWithinTheTrade,
  polishWaitsForCure,
  sandedFineBetweenCoats,
  ...WORK_IN_ORDER,
  ...GROUND_IS_SPARED,
];

/**
 * Repairs do as the trade does: they wait, sand fine, thin no further than it does, polish what is cured, and work in
 * its order.
 */
export function* repairsKeepToTheTrade(known: Knowledge): Generator<Issue> {
  for (const remedy of known.remedies)
    for (const held of HELD) for (const against of held(remedy)) yield toldOfStep(remedy, against);
}
