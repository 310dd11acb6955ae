import type { Widening } from '../calc/drying/coat.ts';
import { dryingOf } from '../calc/drying/figures.ts';
import { handling } from '../calc/drying/handling.ts';
import { type History, steady } from '../calc/drying/history.ts';
import type { ChainMilestone } from '../calc/drying/milestone.ts';
import { noCoat } from '../calc/drying/no-coat.ts';
import { drying } from '../calc/drying.ts';
import { answer, type Problem } from '../calc/quantity.ts';
import type { ClockWords } from '../model/clock-words.ts';
import { UNSANDED, WIPED_OFF } from '../model/family.ts';
import type { Stage } from '../model/stage.ts';
import { entryOf } from '../plain/entry-of.ts';
import { MINUTE_MS, type Stretch } from '../plain/time.ts';
import {
  type ClockProduct,
  climateOf,
  type LaidCoat,
  type OpenFlaw,
  type Products,
  relativeThicknessOf,
} from './coat.ts';
import { type TwoPart, twoPartOf } from './hardener.ts';
import { hasNoWindow } from './late.ts';
import { mayHoldLead } from './lead.ts';
import { type Bears, nextCoatAt } from './next-coat.ts';
import { airAfter, calendarIn, USUAL_NIGHT } from './nights.ts';
import { filmUpTo, thickerThan } from './thick.ts';
import { isThin } from './thin.ts';

/** Phones and watches differ a little: a coat this far ahead still counts as laid now. */
export const AHEAD_MILLISECONDS = MINUTE_MS;

/** When something comes, in epoch milliseconds, and what made it wide. */
export type Moment = Stretch & { readonly reasons: readonly Widening[] };

export type Running = {
  readonly kind: 'running';
  readonly stage: Stage;
  /** `probably` while it may already be one stage further. */
  readonly sureness: 'surely' | 'probably';
  readonly moments: Readonly<Record<ChainMilestone, Moment>> & {
    readonly 'sand-if-beyond'?: Moment;
    /** From when it may be handled, where the can says so. */
    readonly handle?: Moment;
    /** From when till when no coat goes on over it, of a can or a kind that has such hours. */
    readonly 'no-coat'?: Moment;
  };
  /** Until the film is dry to touch; nothing once it surely is. */
  readonly handsOff: Moment | undefined;
  /** False for a finish in the wood, which is buffed between coats. */
  readonly sanded: boolean;
  /** Until the surplus has to be off, of a finish that is wiped off; nothing once that time is over. */
  readonly wipeOff: Moment | undefined;
  /** When a wax has gone dull and is buffed, which it is once for each coat; nothing of any other finish. */
  readonly buff: Moment | undefined;
  /** Whether it takes no other coat now, though it is dry enough for one: see `moments['no-coat']`. */
  readonly closed: boolean;
  /** No other coat comes over it. */
  readonly last: boolean;
  /** A flaw on its card that is not settled: it comes before the next coat. */
  readonly flaw: OpenFlaw | undefined;
  /** Old paint on its piece may hold lead: no word of sanding. */
  readonly lead: boolean;
  /** Isocyanate is in the film, or may be: no dust of it before it is fully cured. */
  readonly twoPart: TwoPart | undefined;
  /** The clear film so far is too thin to be sanded over the whole face. */
  readonly thin: boolean;
  /** The most that the clear film so far is thicker than, µm: no other coat comes over it. Nothing where it is not. */
  readonly pastMost: number | undefined;
  /** The coldest night that is told, and whether it is too cold to count on any drying; nothing where none is. */
  readonly night: { readonly celsius: number; readonly rests: boolean } | undefined;
};

export type Reading =
  | Running
  /** Laid later than now: the time or the clock of the phone is wrong, and nothing is reckoned from it. */
  | { readonly kind: 'future'; readonly laidAt: number }
  /** No time is promised, and why. `night`: not for the air it was laid in, but for the coldest night, °C. */
  | { readonly kind: 'refused'; readonly problem: Problem; readonly night?: number };

/** When something comes that waits for every coat of the piece: the last of them decides. */
const ofAll = (top: Moment, below: readonly Moment[]): Moment => {
  const from = Math.max(top.from, ...below.map((one) => one.from));
  const to = Math.max(top.to, ...below.map((one) => one.to));
  return to > top.to || from > top.from ? { from, to, reasons: [...top.reasons, 'coat-below'] } : top;
};

/** The uppermost coat below, with those that lie below it. */
const nextBelow = ({ below: [first, ...deeper] = [] }: LaidCoat): LaidCoat | undefined =>
  first && (deeper.length ? { ...first, below: deeper } : first);

/**
 * The film against the usual one. A coat that was not ready for another when this one came dries with it as one film
 * (its own earliest time decides: from then on it may have been firm). Common practice, no source.
 */
const filmOf = (product: ClockProduct, coat: LaidCoat, products: Products): number => {
  const own = relativeThicknessOf(product, coat);
  const below = nextBelow(coat);
  const known = below && entryOf(products, below.product);
  if (!known) return own;
  const found = momentsOf(known, below, coat.laidAt, products);
  const soft = found.ok && coat.laidAt < found.value.moments.recoat.from;
  return soft ? Math.min(THICKEST, own + filmOf(known, below, products)) : own;
};
/** More than this against the usual film is not reckoned with. */
const THICKEST = 10;

/** The air that it dries in: by turns with the nights, where they are told. */
const airOf = (coat: LaidCoat): History =>
  coat.night ? airAfter(USUAL_NIGHT, coat, coat.night, calendarIn()) : steady(climateOf(coat));

const momentsOf = (product: ClockProduct, coat: LaidCoat, now: number, products: Products) => {
  const laid = {
    product: dryingOf(product),
    ...(coat.label && { label: coat.label }),
    history: airOf(coat),
    relativeThickness: filmOf(product, coat, products),
    elapsedMinutes: Math.max(0, now - coat.laidAt) / MINUTE_MS,
  };
  const found = drying(laid);
  if (!found.ok) return found;
  const handled = handling(laid);
  if (handled && !handled.ok) return handled;
  const closed = noCoat(laid);
  if (closed && !closed.ok) return closed;
  const moments = Object.fromEntries(
    [
      ...found.value.times,
      ...(handled ? [['handle', handled.value] as const] : []),
      ...(closed ? [['no-coat', closed.value] as const] : []),
    ].map(([milestone, { from, to, reasons }]) => [
      milestone,
      { from: coat.laidAt + from * MINUTE_MS, to: coat.laidAt + to * MINUTE_MS, reasons },
    ]),
  ) as Running['moments'];
  return answer({ ...found.value, moments });
};

/**
 * What the clock says of a coat at `now`, epoch milliseconds. A piece is cured no sooner than its lowest coat: those
 * below count where their figures are among `products`.
 */
export const clockNow = (
  product: ClockProduct,
  coat: LaidCoat,
  now: number,
  products: Products = {},
): Reading => {
  if (!(coat.laidAt <= now + AHEAD_MILLISECONDS)) return { kind: 'future', laidAt: coat.laidAt };
  const found = momentsOf(product, coat, now, products);
  if (!found.ok) {
    const byDay = coat.night && momentsOf(product, { ...coat, night: undefined }, now, products).ok;
    return {
      kind: 'refused',
      problem: found.problem,
      ...(byDay && coat.night && { night: coat.night.celsius }),
    };
  }
  const below = (coat.below ?? []).flatMap((one) => {
    const known = entryOf(products, one.product);
    const reached = known && momentsOf(known, one, now, {});
    return reached?.ok ? reached.value.moments : [];
  });
  const own = found.value.moments;
  const moments = {
    ...own,
    'light-use': ofAll(
      own['light-use'],
      below.map((one) => one['light-use']),
    ),
    cure: ofAll(
      own.cure,
      below.map(({ cure }) => cure),
    ),
  };
  const cured = now >= moments.cure.to;
  const stage = found.value.stage === 'cured' && !cured ? 'recoatable' : found.value.stage;
  const perhaps = found.value.stage === 'cured' && !cured && now >= moments.cure.from;
  return {
    kind: 'running',
    stage,
    sureness: stage === found.value.stage ? found.value.sureness : perhaps ? 'probably' : 'surely',
    moments,
    handsOff: now < moments.touch.to ? moments.touch : undefined,
    sanded: !UNSANDED.includes(product.family),
    wipeOff: WIPED_OFF.includes(product.family) && now < moments.open.to ? moments.open : undefined,
    buff: product.family === 'wax' ? moments.touch : undefined,
    closed: isClosedAt(moments, now),
    last: coat.last ?? false,
    flaw: coat.flaw,
    lead: mayHoldLead(coat.age),
    twoPart: twoPartOf([coat, ...(coat.below ?? [])], { ...products, [coat.product]: product }),
    thin: !UNSANDED.includes(product.family) && isThin(product, coat, products),
    pastMost: thickerThan(filmUpTo(coat, { ...products, [coat.product]: product })),
    night: coat.night && {
      celsius: coat.night.celsius,
      rests: restsBelow(product, coat) > coat.night.celsius,
    },
  };
};

/** Colder than this a film rests: what the can says, else its kind. */
const restsBelow = (product: ClockProduct, { label }: LaidCoat): number =>
  label?.limits?.celsius?.from ?? product.limits.celsius[0];

const isClosedAt = (bears: Bears, now: number): boolean => {
  const next = nextCoatAt(bears, now);
  return !next.may && next.closed && now >= bears.recoat.to;
};

/** What is to be said of a coat once it stands where its time can be told: too cold is the usual case. */
export const rightAgain = (
  { 'no-time': words }: Pick<ClockWords, 'no-time'>,
  { problem, night }: Extract<Reading, { kind: 'refused' }>,
): string =>
  night !== undefined || (typeof problem.value === 'number' && problem.value < problem.min)
    ? words['now-warm']
    : words['now-right'];

/** Whether the next coat needs a dulled film however early it comes. */
export const isLateAtOnce = ({ recoat, 'sand-if-beyond': deadline }: Running['moments']): boolean =>
  deadline !== undefined && hasNoWindow(deadline, recoat);

/** When a coat bears another; nothing where no time can be told. */
export const readyForNext = (coat: LaidCoat, products: Products): Bears | undefined => {
  const product = entryOf(products, coat.product);
  if (!product) return undefined;
  const found = momentsOf(product, coat, coat.laidAt, products);
  // A night that spoils it does not make it ready sooner than the day alone would.
  const least = found.ok ? found : momentsOf(product, { ...coat, night: undefined }, coat.laidAt, products);
  return least.ok ? least.value.moments : undefined;
};
