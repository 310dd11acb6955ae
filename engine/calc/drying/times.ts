import type { Span } from '../../plain/span.ts';
import { answer, type Range, type Result } from '../quantity.ts';
import { type Climate, REFERENCE_CLIMATE, sameClimate } from './climate.ts';
import type { Coat, Times, Widening } from './coat.ts';
import type { Figures } from './figures.ts';
import { type Early, notBeforePrinted } from './floors.ts';
import { type Course, goOn, type Place, START } from './history.ts';
import { CHAIN, type ChainMilestone, type Milestone } from './milestone.ts';

/** Floating point: what differs by less was not moved. */
const ALMOST = 1e-9;

/** These end something: to be told sooner is the safe side of them. All others are promises. */
const ENDS: readonly Milestone[] = ['open', 'sand-if-beyond'];

const wideningOf = (
  coat: Coat,
  milestone: Milestone,
  base: Climate,
  reached: Span & { rested: boolean },
): Widening[] => {
  const labeled = coat.label?.minutes[milestone];
  const source = labeled ?? coat.product.figures[milestone];
  const reasons: Widening[] = [];
  if (source && source.to > source.from) reasons.push(labeled ? 'label-range' : 'product-varies');
  const moved = !labeled && !sameClimate(base, REFERENCE_CLIMATE);
  const sooner = labeled && reached.from < labeled.from * (1 - ALMOST);
  if (sooner) reasons.push('label-in-warmth');
  else if (moved || coat.history.some((spell) => !sameClimate(spell, base))) reasons.push('weather');
  if (coat.relativeThickness !== 1) reasons.push(coat.relativeThickness < 1 ? 'thin-film' : 'thick-film');
  if (reached.rested) reasons.push('cold-spells');
  return reasons;
};

/** How one moment is reached: its ends, and the places from which the next ones go on. */
type Reached = Span & { readonly rested: boolean; readonly early: Place; readonly late: Place };

/**
 * From a moment to the next. A thin film is counted on to end sooner what sooner is the safe side of, and to bring the
 * late end of a promise nearer; never its early end, which is what the fastest can of the kind does.
 */
const reach = (
  coat: Coat,
  course: Course,
  milestone: Milestone,
  minutes: Span,
  [early, late]: readonly [Place, Place],
): Result<Reached> => {
  const { relativeThickness } = coat;
  const least = Math.max(1, relativeThickness);
  const from = goOn(course, early, milestone, minutes.from, 'from', least);
  if (!from.ok) return from;
  const to = goOn(course, late, milestone, minutes.to, 'to', relativeThickness);
  if (!to.ok) return to;
  const ends =
    ENDS.includes(milestone) && relativeThickness < 1
      ? goOn(course, early, milestone, minutes.from, 'from', relativeThickness)
      : from;
  if (!ends.ok) return ends;
  return answer({
    from: ends.value.at,
    to: to.value.at,
    rested: to.value.rested,
    early: from.value,
    late: to.value,
  });
};

/** Every moment of a coat, walked through its weather from one to the next. `printed`: at 23 °C and 50 %. */
export const timesOf = (coat: Coat, figures: Figures, printed: Figures, course: Course): Result<Times> => {
  const reached = new Map<Milestone, Reached>();
  let places: readonly [Place, Place] = [START, START];
  let before: Span = { from: 0, to: 0 };
  const step = (milestone: Milestone, time: Span): Result<Reached> => {
    const found = reach(
      coat,
      course,
      milestone,
      { from: time.from - before.from, to: time.to - before.to },
      places,
    );
    if (found.ok) reached.set(milestone, found.value);
    return found;
  };
  for (const milestone of CHAIN) {
    const found = step(milestone, figures[milestone]);
    if (!found.ok) return found;
    places = [found.value.early, found.value.late];
    before = figures[milestone];
    const deadline = milestone === 'recoat' && figures['sand-if-beyond'];
    const side = deadline && step('sand-if-beyond', deadline);
    if (side && !side.ok) return side;
  }
  const reckoned = Object.fromEntries(CHAIN.map((milestone) => [milestone, reached.get(milestone)?.from]));
  const early = notBeforePrinted(reckoned as Early, printed, coat.label, course);
  const times = new Map<Milestone, Range<Widening>>();
  for (const [milestone, { to, from, rested }] of reached) {
    // A deadline can not lie before the moment from which it counts.
    const start =
      milestone === 'sand-if-beyond' ? Math.max(from, early.recoat) : early[milestone as ChainMilestone];
    const range = { from: start, to: Math.max(to, start) };
    const reasons = wideningOf(coat, milestone, course.base, { ...range, rested });
    times.set(milestone, { ...range, unit: 'min', reasons });
  }
  return answer(times);
};
