import { answer, type Range, type Result } from '../quantity.ts';
import { type Climate, REFERENCE_CLIMATE, sameClimate } from './climate.ts';
import type { Coat, Times, Widening } from './coat.ts';
import type { Figures, Span } from './figures.ts';
import { type Course, goOn, type Place, START } from './history.ts';
import { CHAIN, type Milestone } from './milestone.ts';

const wideningOf = (coat: Coat, milestone: Milestone, base: Climate, rested: boolean): Widening[] => {
  const labelled = coat.label?.minutes[milestone];
  const source = labelled ?? coat.product.figures[milestone];
  const reasons: Widening[] = [];
  if (source && source.to > source.from) reasons.push(labelled ? 'label-range' : 'product-varies');
  const moved = !labelled && !sameClimate(base, REFERENCE_CLIMATE);
  if (moved || coat.history.some((spell) => !sameClimate(spell, base))) reasons.push('weather');
  if (coat.relativeThickness !== 1) reasons.push('film-thickness');
  if (rested) reasons.push('cold-spells');
  return reasons;
};

/** Every moment of a coat, walked through its weather from one to the next. */
export const timesOf = (coat: Coat, figures: Figures, course: Course): Result<Times> => {
  const times = new Map<Milestone, Range<Widening>>();
  const ends: Record<'from' | 'to', Place> = { from: START, to: START };
  let before: Span = { from: 0, to: 0 };
  const lay = (milestone: Milestone, time: Span): Result<Record<'from' | 'to', Place>> => {
    const from = goOn(course, ends.from, milestone, time.from - before.from, 'from');
    if (!from.ok) return from;
    const to = goOn(course, ends.to, milestone, time.to - before.to, 'to');
    if (!to.ok) return to;
    const range = { from: from.value.at, to: to.value.at };
    const reasons = wideningOf(coat, milestone, course.base, to.value.rested);
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
