import type { Stage } from '../model/stage.ts';
import { type Climate, outsideClimate, REFERENCE_CLIMATE } from './drying/climate.ts';
import type { DryingProduct, Figures, Span } from './drying/figures.ts';
import { type Course, goOn, type History, outsideHistory, type Place, START } from './drying/history.ts';
import { type Label, withLabel } from './drying/label.ts';
import { CHAIN, type Milestone } from './drying/milestone.ts';
import { slowing } from './drying/slowing.ts';
import { answer, outside, type Range, type Result } from './quantity.ts';

export type Coat = {
  product: DryingProduct;
  label?: Label;
  /** Weather since the coat was laid; `steady` makes one of constant weather. */
  history: History;
  /** Wet film divided by the product's reference wet film, 0.1 to 10. */
  relativeThickness: number;
  /** Minutes since the coat was laid. */
  elapsedMinutes: number;
};

/** What made a time wide. */
export type Widening = 'product-varies' | 'label-range' | 'weather' | 'film-thickness' | 'cold-spells';

export type Drying = {
  /** The stage that the film has reached for certain, on the cautious side. */
  stage: Stage;
  /** `probably` while it may already be one stage further. */
  sureness: 'surely' | 'probably';
  /** Minutes since the coat was laid. */
  times: ReadonlyMap<Milestone, Range<Widening>>;
  /** Those still to come, soonest first. */
  next: readonly { milestone: Milestone; range: Range<Widening> }[];
};

/** Where each stage ends. `light-use` and `sand-if-beyond` do not change the stage. */
const STAGE_AFTER: readonly (readonly [Milestone, Stage])[] = [
  ['open', 'setting'],
  ['touch', 'dry-to-touch'],
  ['recoat', 'recoatable'],
  ['cure', 'cured'],
];

/** Figures carried from one climate to another, step by step, so that their order is kept. */
const carried = (figures: Figures, product: DryingProduct, from: Climate, to: Climate): Figures => {
  const after = (milestone: Milestone, time: Span, before: Span, start: Span): Span => {
    const slow = slowing(product.mechanism, milestone, from, to, 1);
    return {
      from: start.from + (time.from - before.from) * slow.from,
      to: start.to + (time.to - before.to) * slow.to,
    };
  };
  const moved = { ...figures };
  let [before, start]: [Span, Span] = [{ from: 0, to: 0 }, { from: 0, to: 0 }];
  for (const milestone of CHAIN) {
    start = after(milestone, figures[milestone], before, start);
    before = figures[milestone];
    moved[milestone] = start;
  }
  const deadline = figures['sand-if-beyond'];
  if (!deadline) return moved;
  return { ...moved, 'sand-if-beyond': after('sand-if-beyond', deadline, figures.recoat, moved.recoat) };
};

const wideningOf = (coat: Coat, milestone: Milestone, range: Span, rested: boolean): Widening[] => {
  const labelled = coat.label?.minutes[milestone];
  const source = labelled ?? coat.product.figures[milestone];
  const reasons: Widening[] = [];
  if (source && source.to > source.from) reasons.push(labelled ? 'label-range' : 'product-varies');
  if (source && (range.from !== source.from || range.to !== source.to)) reasons.push('weather');
  if (coat.relativeThickness !== 1) reasons.push('film-thickness');
  if (rested) reasons.push('cold-spells');
  return reasons;
};

const timesOf = (coat: Coat, figures: Figures, course: Course): Result<Map<Milestone, Range<Widening>>> => {
  const times = new Map<Milestone, Range<Widening>>();
  const ends: Record<'from' | 'to', Place> = { from: START, to: START };
  let before: Span = { from: 0, to: 0 };
  const lay = (milestone: Milestone, time: Span): Result<Record<'from' | 'to', Place>> => {
    const from = goOn(course, ends.from, milestone, time.from - before.from, 'from');
    if (!from.ok) return from;
    const to = goOn(course, ends.to, milestone, time.to - before.to, 'to');
    if (!to.ok) return to;
    const range = { from: from.value.at, to: to.value.at };
    const reasons = wideningOf(coat, milestone, range, to.value.rested);
    times.set(milestone, { ...range, unit: 'min', reasons });
    return answer({ from: from.value, to: to.value });
  };
  for (const milestone of CHAIN) {
    const reached = lay(milestone, figures[milestone]);
    if (!reached.ok) return reached;
    Object.assign(ends, reached.value);
    before = figures[milestone];
    const deadline = milestone === 'recoat' && figures['sand-if-beyond'];
    const side = deadline && lay('sand-if-beyond', deadline);
    if (side && !side.ok) return side;
  }
  return answer(times);
};

/**
 * How dry a coat is now, and when each next moment comes, as ranges in minutes since it was laid.
 * Label times win over the product's and come back unchanged in the label's own climate. Weather outside the
 * product's limits while the film sets is refused: then no time is promised. Knows no clock: the minutes come in.
 */
export const drying = (coat: Coat): Result<Drying> => {
  const { label, history, relativeThickness, elapsedMinutes } = coat;
  const base = label?.climate ?? REFERENCE_CLIMATE;
  const refused =
    outsideClimate(base) ??
    outside(
      ['film thickness against the usual', relativeThickness, 0.1, 10, ''],
      ['time since the coat was laid', elapsedMinutes, 0, Number.MAX_SAFE_INTEGER, 'min'],
    ) ??
    outsideHistory(history);
  if (refused) return refused;
  const product = { ...coat.product, limits: { ...coat.product.limits, ...label?.limits } };
  const there = carried(coat.product.figures, product, REFERENCE_CLIMATE, base);
  const figures = label ? withLabel(there, label) : answer(there);
  if (!figures.ok) return figures;
  const times = timesOf(coat, figures.value, { product, base, history, relativeThickness });
  if (!times.ok) return times;

  let stage: Stage = 'wet';
  let sureness: Drying['sureness'] = 'surely';
  for (const [milestone, after] of STAGE_AFTER) {
    const time = times.value.get(milestone);
    if (!time) continue;
    if (elapsedMinutes >= time.to) stage = after;
    else if (elapsedMinutes >= time.from) sureness = 'probably';
  }
  const next = [...times.value]
    .filter(([, range]) => range.to > elapsedMinutes)
    .map(([milestone, range]) => ({ milestone, range }))
    .sort((one, two) => one.range.to - two.range.to);
  return answer({ stage, sureness, times: times.value, next });
};
