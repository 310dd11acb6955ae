import { dryingOf } from '../calc/drying/figures.ts';
import { handling } from '../calc/drying/handling.ts';
import type { ChainMilestone, Printed } from '../calc/drying/milestone.ts';
import { noCoat } from '../calc/drying/no-coat.ts';
import { slowing } from '../calc/drying/slowing.ts';
import type { Slowing } from '../calc/drying/slowing-range.ts';
import { drying } from '../calc/drying.ts';
import { answer, type Result } from '../calc/quantity.ts';
import { relativeFilm } from '../clock/coat.ts';
import { historyFrom, nightOf, nightsIn } from '../clock/nights.ts';
import type { Span } from '../plain/span.ts';
import { DAY_MIN, MINUTE_MS, type Stretch } from '../plain/time.ts';
import type { Laying } from './layings.ts';
import type { Planning } from './planning.ts';

/** Days of day and night reckoned after a coat; what is still not over then goes on as by day. */
const HORIZON = { between: 14, last: 90 } as const;

export type Dried = Readonly<Record<ChainMilestone, Stretch>> & {
  readonly 'sand-if-beyond'?: Stretch;
  /** From when it may be handled, where the can says so. */
  readonly handle?: Stretch;
  /** From when till when no coat goes on over it, of a can or a kind that has such hours. */
  readonly 'no-coat'?: Stretch;
};

/** No time of a can is the least of these. */
const MOVES: readonly Printed[] = ['open', 'sand-if-beyond', 'no-coat'];

/** What a plan has told of a coat that dries: of the build the wet film alone, µm. */
type Drying = Omit<Planning, 'build'> & { readonly build: Pick<Planning['build'], 'wet'> };

/**
 * When a coat laid by `laidTo` reaches each moment, epoch milliseconds, through the days and nights after it. A label
 * time is for an ordinary coat and is a least one: warm weather does not shorten it. Nor does it, or a thin film, bring
 * the day of full cure forward: that is a promise to a buyer.
 */
export const driedAt = (
  { plan, job, product, calendar, build }: Drying,
  laidTo: number,
  which: keyof typeof HORIZON,
): Result<Dried> => {
  const { label } = job;
  const thickness = relativeFilm(product, job.applicator, build.wet);
  const laid = {
    product: dryingOf(product),
    ...(label && { label }),
    history: historyFrom(plan, job, calendar, laidTo, HORIZON[which]),
    relativeThickness: Math.min(Math.max(thickness, 0.1), 10),
    elapsedMinutes: 0,
  };
  const found = drying(laid);
  if (!found.ok) return found;
  const handled = handling(laid);
  if (handled && !handled.ok) return handled;
  const closed = noCoat(laid);
  if (closed && !closed.ok) return closed;
  const times: readonly (readonly [Printed, Span])[] = [
    ...found.value.times,
    ...(handled ? [['handle', handled.value] as const] : []),
    ...(closed ? [['no-coat', closed.value] as const] : []),
  ];
  const promised = (milestone: Printed) => (milestone === 'cure' ? product['cure-days'][1] * DAY_MIN : 0);
  const moments = times.map(([milestone, { from, to }]) => {
    // A deadline must not move out; all else must not come in. Of hours without a coat both ends are reckoned so.
    const least = MOVES.includes(milestone) ? undefined : label?.minutes[milestone];
    return [
      milestone,
      {
        from: laidTo + Math.max(from, least?.from ?? 0) * MINUTE_MS,
        to: laidTo + Math.max(to, least?.to ?? promised(milestone)) * MINUTE_MS,
      },
    ];
  });
  return answer(Object.fromEntries(moments) as Dried);
};

/** What one night does to a coat that is drying. */
export type Night = Stretch & {
  /** The coat that it falls on, from 1, and its face. */
  readonly coat: number;
  readonly face?: Laying['face'];
  /** Too cold to count on any drying at all. */
  readonly rests: boolean;
  /** How many times longer drying takes than by day. */
  readonly slower: Slowing;
};

/** The nights that fall on a wait. */
export const nightsOn = (
  { plan, job, product, calendar }: Planning,
  wait: Stretch,
  { number, face }: Laying,
): readonly Night[] => {
  const night = nightOf(plan, job);
  const least = job.label?.limits?.celsius?.from ?? product.limits.celsius[0];
  const slower = slowing(product.mechanism, 'light-use', job.day, night, 1);
  return nightsIn(plan, job, calendar, wait).map((stretch) => ({
    ...stretch,
    coat: number,
    ...(face && { face }),
    rests: night.celsius < least,
    slower,
  }));
};
