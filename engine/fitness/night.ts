import { dryingOf } from '../calc/drying/figures.ts';
import { steady } from '../calc/drying/history.ts';
import { drying } from '../calc/drying.ts';
import type { Problem } from '../calc/quantity.ts';
import { sayProblem } from '../calc/say-problem.ts';
import type { Units } from '../calc/units.ts';
import { airAfter, calendarIn, USUAL_NIGHT } from '../clock/nights.ts';
import type { Plan } from '../model/plan.ts';
import { filled } from '../plain/filled.ts';
import { DAY_MS } from '../plain/time.ts';
import type { Laying, LayingProduct } from './laying.ts';
import type { No } from './no.ts';

/** The words for it. */
type NightWords = { readonly noes: Pick<Plan['noes'], 'night'> };

/** A night that spoils each coat before it is dry enough. */
export const spoiledByNight = ({ noes }: NightWords, problem: Problem, units: Units): No => ({
  code: 'drying',
  says: filled(noes.night.why, { how: sayProblem(problem, units) }),
  instead: noes.night.instead,
});

/** Beyond this no date is told, milliseconds either way: ECMA-262, 21.4.1.1, less a year for the nights that follow. */
const MOST_INSTANT = 8.64e15 - 366 * DAY_MS;

/**
 * What the nights after `at` do to a coat that is laid then, as the clock reckons it: a no where they spoil it. What the
 * day alone forbids is told of the day. A time that is none, as while it is typed, has no nights.
 */
export const nightsAfter = (
  plan: NightWords,
  product: LayingProduct,
  { day, night, label }: Laying,
  at: number,
  units: Units,
): readonly No[] => {
  if (!night || !(Math.abs(at) <= MOST_INSTANT)) return [];
  const coat = {
    product: dryingOf(product),
    ...(label && { label }),
    relativeThickness: 1,
    elapsedMinutes: 0,
  };
  const found = drying({
    ...coat,
    history: airAfter(USUAL_NIGHT, { ...day, laidAt: at }, night, calendarIn()),
  });
  if (found.ok || !drying({ ...coat, history: steady(day) }).ok) return [];
  return [spoiledByNight(plan, found.problem, units)];
};
