import type { Widening } from '../calc/drying/coat.ts';
import { dryingOf } from '../calc/drying/figures.ts';
import { steady } from '../calc/drying/history.ts';
import type { ChainMilestone } from '../calc/drying/milestone.ts';
import { drying } from '../calc/drying.ts';
import type { Problem } from '../calc/quantity.ts';
import type { Stage } from '../model/stage.ts';
import { type ClockProduct, climateOf, type LaidCoat, wetFilmOf } from './coat.ts';

export const MINUTE = 60_000;

/** Phones and watches differ a little: a coat this far ahead still counts as laid now. */
export const AHEAD_MILLISECONDS = MINUTE;

/** When something comes, in epoch milliseconds, and what made it wide. */
export type Moment = { readonly from: number; readonly to: number; readonly reasons: readonly Widening[] };

export type Running = {
  readonly kind: 'running';
  readonly stage: Stage;
  /** `probably` while it may already be one stage further. */
  readonly sureness: 'surely' | 'probably';
  readonly moments: Readonly<Record<ChainMilestone, Moment>> & { readonly 'sand-if-beyond'?: Moment };
  /** Until the film is dry to touch; nothing once it surely is. */
  readonly handsOff: Moment | undefined;
};

export type Reading =
  | Running
  /** Laid later than now: the time or the clock of the phone is wrong, and nothing is reckoned from it. */
  | { readonly kind: 'future'; readonly laidAt: number }
  /** No time is promised, and why. */
  | { readonly kind: 'refused'; readonly problem: Problem };

/** What the clock says of a coat at `now`, epoch milliseconds. */
export const clockNow = (product: ClockProduct, coat: LaidCoat, now: number): Reading => {
  if (!(coat.laidAt <= now + AHEAD_MILLISECONDS)) return { kind: 'future', laidAt: coat.laidAt };
  const reference = product['reference-wet-film-micrometers'];
  const found = drying({
    product: dryingOf(product),
    ...(coat.label && { label: coat.label }),
    history: steady(climateOf(coat)),
    relativeThickness: (wetFilmOf(product, coat) ?? reference) / reference,
    elapsedMinutes: Math.max(0, now - coat.laidAt) / MINUTE,
  });
  if (!found.ok) return { kind: 'refused', problem: found.problem };
  const { stage, sureness, times } = found.value;
  const moments = Object.fromEntries(
    [...times].map(([milestone, { from, to, reasons }]) => [
      milestone,
      { from: coat.laidAt + from * MINUTE, to: coat.laidAt + to * MINUTE, reasons },
    ]),
  ) as Running['moments'];
  const handsOff = now < moments.touch.to ? moments.touch : undefined;
  return { kind: 'running', stage, sureness, moments, handsOff };
};
