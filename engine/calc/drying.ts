import type { Stage } from '../model/stage.ts';
import { carried } from './drying/carried.ts';
import { belowDewPoint, nearly, outsideClimate, REFERENCE_CLIMATE } from './drying/climate.ts';
import type { Coat, Times, Widening } from './drying/coat.ts';
import type { Figures } from './drying/figures.ts';
import { outsideHistory, type Spell } from './drying/history.ts';
import { outsideLabel, underLabel, withLabel } from './drying/label.ts';
import type { Milestone } from './drying/milestone.ts';
import { timesOf } from './drying/times.ts';
import { answer, outside, type Range, type Result } from './quantity.ts';

export type Drying = {
  /** The stage that the film has reached for certain, on the cautious side. */
  readonly stage: Stage;
  /** `probably` while it may already be one stage further. */
  readonly sureness: 'surely' | 'probably';
  /** Minutes since the coat was laid. */
  readonly times: Times;
  /** Those still to come, soonest first. */
  readonly next: readonly { readonly milestone: Milestone; readonly range: Range<Widening> }[];
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
 * Label times win over the product's and come back unchanged in the label's own climate. Neither warmth nor a thin film
 * promises anything before what is printed; of a label only weather does, and only times to the touch and to the next
 * coat. Weather outside the product's limits while the film sets is refused: then no time is promised. Knows no clock:
 * the minutes come in.
 */
export const drying = (told: Coat): Result<Drying> => {
  const { label, relativeThickness, elapsedMinutes } = told;
  const base = label?.climate ?? REFERENCE_CLIMATE;
  const refused =
    outsideClimate(base) ??
    belowDewPoint(base) ??
    outside(
      ['film thickness against the usual', relativeThickness, 0.1, 10, ''],
      ['time since the coat was laid', elapsedMinutes, 0, Number.MAX_SAFE_INTEGER, 'min'],
    ) ??
    outsideHistory(told.history) ??
    (label && outsideLabel(label));
  if (refused) return refused;
  // The can means an ordinary coat: a thin one does not shorten its times.
  const ordinary = label !== undefined && Object.keys(label.minutes).length > 0;
  const near = (spell: Spell): Spell => ({ ...spell, ...nearly(spell, base) });
  const [first, ...rest] = told.history;
  const coat: Coat = {
    ...told,
    relativeThickness: ordinary ? Math.max(1, relativeThickness) : relativeThickness,
    history: [near(first), ...rest.map(near)],
  };
  const product = underLabel(coat.product, label);
  const there = carried(coat.product.figures, product, REFERENCE_CLIMATE, base);
  const byCan = (figures: Figures): Figures => (label ? withLabel(figures, label) : figures);
  const course = { product, base, history: coat.history };
  const times = timesOf(coat, byCan(there), byCan(coat.product.figures), course);
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
