import { dryingOf } from '../calc/drying/figures.ts';
import { handling } from '../calc/drying/handling.ts';
import { type History, steady } from '../calc/drying/history.ts';
import { drying } from '../calc/drying.ts';
import { answer, type Result } from '../calc/quantity.ts';
import { sayProblem } from '../calc/say-problem.ts';
import type { Units } from '../calc/units.ts';
import { type ClockProduct, climateOf, type LaidCoat, relativeThicknessOf } from '../clock/coat.ts';
import { airAfter, type Calendar } from '../clock/nights.ts';
import type { Care } from '../model/care.ts';
import type { JobCard } from '../model/job-card.ts';
import type { Plan } from '../model/plan.ts';
import type { Span } from '../plain/span.ts';
import { DAY_MIN, later, MINUTE_MS, type Stretch } from '../plain/time.ts';
import { type Dates, datesOf } from '../schedule/dates.ts';
import { coatsInOrder, laidCoatOf } from './coat.ts';
import { type Products, productOf } from './layers.ts';
import { supposedNight } from './nights.ts';
import { trialsOf } from './use.ts';

/** When the buyer may do what, epoch milliseconds; or why no date can be promised, and what to do. */
export type CareDates =
  | ({
      readonly kind: 'dates';
      /**
       * What nights that nobody noted did to them: they are allowed for, or left out, since in them the film might not
       * dry at all. Nothing where the nights are known or change nothing.
       */
      readonly unknownNights: 'allowed-for' | 'left-out' | undefined;
    } & Dates)
  /** `problem`: what is wrong with its air, in words. */
  | { readonly kind: 'none'; readonly why: keyof Care['no-date']; readonly problem?: string };

/** The tables that the dates rest on; a page need not load the others. */
export type DatePlan = Pick<Plan, 'careful' | 'handle' | 'airing' | 'night'>;

const none = (why: keyof Care['no-date'], problem?: string): CareDates => ({
  kind: 'none',
  why,
  ...(problem && { problem }),
});

type Moments = Readonly<Record<'recoat' | 'light-use' | 'cure', Stretch>> & {
  /** From when it may be handled, where the can says so. */
  readonly handle?: Stretch;
};

/** When one coat reaches each moment in this air. The label wins: its times are least ones, for an ordinary coat. */
const momentsIn = (history: History, coat: LaidCoat, product: ClockProduct): Result<Moments> => {
  const { label, laidAt } = coat;
  const laid = {
    product: dryingOf(product),
    ...(label && { label }),
    history,
    relativeThickness: relativeThicknessOf(product, coat),
    elapsedMinutes: 0,
  };
  const found = drying(laid);
  if (!found.ok) return found;
  const handled = handling(laid);
  if (handled && !handled.ok) return handled;
  const moment = (
    which: keyof Moments,
    time: Span = (which !== 'handle' && found.value.times.get(which)) || { from: 0, to: 0 },
  ): Stretch => {
    const least = label?.minutes[which];
    // As in the schedule: no warmth and no thin film brings full cure forward.
    const promised = which === 'cure' ? product['cure-days'][1] * DAY_MIN : 0;
    return {
      from: laidAt + Math.max(time.from, least?.from ?? 0) * MINUTE_MS,
      to: laidAt + Math.max(time.to, least?.to ?? promised) * MINUTE_MS,
    };
  };
  return answer({
    recoat: moment('recoat'),
    'light-use': moment('light-use'),
    cure: moment('cure'),
    ...(handled && { handle: moment('handle', handled.value) }),
  });
};

/** When the piece reaches each moment: with its top coat, but used and cured no sooner than any coat below: it waits for all. */
const ofPiece = (
  air: (coat: LaidCoat) => History,
  top: LaidCoat,
  product: ClockProduct,
  products: Products,
): Result<Moments> => {
  const own = momentsIn(air(top), top, product);
  if (!own.ok) return own;
  let all = own.value;
  for (const coat of top.below ?? []) {
    const known = productOf(products, coat.product);
    const found = known && momentsIn(air(coat), coat, known);
    if (!found?.ok) continue;
    all = {
      ...all,
      'light-use': later(all['light-use'], found.value['light-use']),
      cure: later(all.cure, found.value.cure),
    };
  }
  return answer(all);
};

/** From the early end of the one to the late end of the other. */
const across = (early: Stretch, late: Stretch): Stretch => ({
  from: Math.min(early.from, late.from),
  to: Math.max(early.to, late.to),
});

/**
 * The dates of a card by its last coat, in the air of its laying by day and that of the card’s nights. Where no night is
 * noted, they reach from nights as warm as the day to colder ones, and say so. `calendar` is that of the place.
 */
export const datesOfCard = (
  card: JobCard,
  products: Products,
  plan: DatePlan,
  calendar: (at: number) => Calendar,
  units: Units = 'metric',
): CareDates => {
  const last = coatsInOrder(card).at(-1);
  if (!last) return none('no-coat');
  const product = productOf(products, last.product);
  if (!product) return none('no-product');
  const coat = laidCoatOf(card, last);
  const { label } = coat;
  const least = label?.limits?.celsius?.from ?? product.limits.celsius[0];
  const night = card.night ?? supposedNight(plan, coat, least);
  const found = ofPiece((one) => airAfter(plan, one, night, calendar), coat, product, products);
  const even = card.night ? found : ofPiece((one) => steady(climateOf(one)), coat, product, products);
  // What was only supposed forbids no date: then the air of laying has to do, and it is said what it leaves out.
  const late = found.ok ? found : even;
  if (!late.ok) return none('no-time', sayProblem(late.problem, units));
  if (!even.ok) return none('no-time', sayProblem(even.problem, units));
  const use = { kind: card.kind, trials: trialsOf(card), label };
  const dates = (at: Moments) =>
    datesOf(
      plan,
      use,
      product.family,
      { to: last.laidAt, recoat: at.recoat, handle: at.handle },
      at['light-use'],
      at.cure,
    );
  const [early, sure] = [dates(even.value), dates(late.value)];
  const wide = early.fullUse.to < sure.fullUse.to || early.lightUse.to < sure.lightUse.to;
  return {
    kind: 'dates',
    ...sure,
    lightUse: across(early.lightUse, sure.lightUse),
    fullUse: across(early.fullUse, sure.fullUse),
    unknownNights: !found.ok ? 'left-out' : wide ? 'allowed-for' : undefined,
  };
};
