import type { Stage } from '../model/stage.ts';
import { carried } from './drying/carried.ts';
import { belowDewPoint, outsideClimate, REFERENCE_CLIMATE } from './drying/climate.ts';
import type { Coat, Times, Widening } from './drying/coat.ts';
import { outsideHistory } from './drying/history.ts';
import { underLabel, withLabel } from './drying/label.ts';
import type { Milestone } from './drying/milestone.ts';
import { timesOf } from './drying/times.ts';
import { answer, outside, type Range, type Result } from './quantity.ts';

export type Drying = {
  /** The stage that the film has reached for certain, on the cautious side. */
  stage: Stage;
  /** `probably` while it may already be one stage further. */
  sureness: 'surely' | 'probably';
  /** Minutes since the coat was laid. */
  times: Times;
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
    belowDewPoint(base) ??
    outside(
      ['film thickness against the usual', relativeThickness, 0.1, 10, ''],
      ['time since the coat was laid', elapsedMinutes, 0, Number.MAX_SAFE_INTEGER, 'min'],
    ) ??
    outsideHistory(history);
  if (refused) return refused;
  const product = underLabel(coat.product, label);
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
