import { dryingOf } from '../calc/drying/figures.ts';
import { steady } from '../calc/drying/history.ts';
import { drying } from '../calc/drying.ts';
import { sayProblem } from '../calc/say-problem.ts';
import { climateOf, wetFilmOf } from '../clock/coat.ts';
import { MINUTE } from '../clock/reading.ts';
import type { JobCard } from '../model/job-card.ts';
import type { Plan } from '../model/plan.ts';
import { type Dates, datesOf } from '../schedule/dates.ts';
import { coatsInOrder, laidCoatOf } from './coat.ts';
import { type Products, productOf } from './layers.ts';
import { trialsOf } from './use.ts';

/** When the buyer may do what, epoch milliseconds; or why no date can be promised, and what to do. */
export type CareDates =
  | ({ readonly kind: 'dates' } & Dates)
  | { readonly kind: 'none'; readonly says: string };

/** The tables that the dates rest on; a page need not load the others. */
export type DatePlan = Pick<Plan, 'careful' | 'handle' | 'airing'>;

const DAY_MINUTES = 1440;

const none = (says: string): CareDates => ({ kind: 'none', says });

/**
 * The dates of a card by its last coat. The label wins: its times are for an ordinary coat and are least ones, so
 * warm weather does not shorten them. The air is that of the hour of laying: a colder room later makes it longer.
 */
export const datesOfCard = (card: JobCard, products: Products, plan: DatePlan): CareDates => {
  const last = coatsInOrder(card).at(-1);
  if (!last) return none('No coat is laid yet, so there is no date. Note the coats on the card first.');
  const product = productOf(products, last.product);
  if (!product)
    return none('This product is not known here, so there is no date. Go by the cure time on its can.');
  const coat = laidCoatOf(card, last);
  const { label } = coat;
  const told = label !== undefined && Object.keys(label.minutes).length > 0;
  const reference = product['reference-wet-film-micrometers'];
  const wet = told && !coat.amount ? reference : (wetFilmOf(product, coat) ?? reference);
  const found = drying({
    product: dryingOf(product),
    ...(label && { label }),
    history: steady(climateOf(coat)),
    relativeThickness: wet / reference,
    elapsedMinutes: 0,
  });
  if (!found.ok) return none(`No date can be promised. ${sayProblem(found.problem)}`);
  const { times } = found.value;
  const moment = (which: 'recoat' | 'light-use' | 'cure') => {
    const time = times.get(which) ?? { from: 0, to: 0 };
    const least = label?.minutes[which];
    // As in the schedule: no warmth and no thin film brings full cure forward.
    const promised = which === 'cure' ? product['cure-days'][1] * DAY_MINUTES : 0;
    return {
      from: last.laidAt + Math.max(time.from, least?.from ?? 0) * MINUTE,
      to: last.laidAt + Math.max(time.to, least?.to ?? promised) * MINUTE,
    };
  };
  const use = { kind: card.kind, trials: trialsOf(card), label };
  const end = { to: last.laidAt, recoat: moment('recoat') };
  return {
    kind: 'dates',
    ...datesOf(plan as Plan, use, product.family, end, moment('light-use'), moment('cure')),
  };
};
