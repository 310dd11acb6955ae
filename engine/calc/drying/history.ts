import { answer, outside, type Refused, type Result } from '../quantity.ts';
import { belowDewPoint, type Climate, outsideClimate, surfaceOf } from './climate.ts';
import type { DryingProduct } from './figures.ts';
import { outsideLimits } from './limits.ts';
import type { Milestone } from './milestone.ts';
import { slowing } from './slowing.ts';

/** A stretch of steady weather after the coat was laid. The last one lasts as long as it is needed. */
export type Spell = Climate & { readonly minutes: number };
export type History = readonly [Spell, ...Spell[]];

/** The same weather all along. */
export const steady = (climate: Climate): History => [{ ...climate, minutes: Number.POSITIVE_INFINITY }];

/** Refuses a history with an impossible climate or a negative length. */
export const outsideHistory = (history: History): Refused | undefined => {
  for (const spell of history) {
    const refused =
      outsideClimate(spell) ??
      outside(['length of a spell of weather', spell.minutes, 0, Number.POSITIVE_INFINITY, 'min']);
    if (refused) return refused;
  }
  return undefined;
};

/** A place in the history: which spell, how far into it, and the minutes since the coat was laid. */
export type Place = {
  readonly spell: number;
  readonly into: number;
  readonly at: number;
  readonly rested: boolean;
};
export const START: Place = { spell: 0, into: 0, at: 0, rested: false };

export type Course = {
  readonly product: DryingProduct;
  readonly base: Climate;
  readonly history: History;
};

/**
 * What no time can be promised for. Until it is dry to touch a film needs weather inside the product's limits, and
 * one of fusing droplets until it can be recoated; after that only dew on it counts until then, and cold costs time.
 */
const spoiledBy = (product: DryingProduct, spell: Spell, milestone: Milestone): Refused | undefined => {
  if (milestone === 'open' || milestone === 'touch') return outsideLimits(product, spell);
  if (milestone !== 'recoat') return undefined;
  return product.mechanism === 'coalescence' ? outsideLimits(product, spell) : belowDewPoint(spell);
};

/**
 * Goes on from a place until a step that takes `minutes` in the base climate is done. Where cold only costs time, it
 * counts as no progress at the late end of the range and as slow progress at the early end.
 */
export const goOn = (
  { product, base, history }: Course,
  place: Place,
  milestone: Milestone,
  minutes: number,
  end: 'from' | 'to',
  relativeThickness: number,
): Result<Place> => {
  let { spell: index, into, at, rested } = place;
  let left = minutes;
  for (;;) {
    const spell = history[index];
    if (!spell || left <= 0) return answer({ spell: index, into, at, rested });
    const room = index === history.length - 1 ? Number.POSITIVE_INFINITY : spell.minutes - into;
    const cold = Math.min(spell.celsius, surfaceOf(spell)) < product.limits.celsius.from;
    const rests = cold && end === 'to';
    const endless = rests && room === Number.POSITIVE_INFINITY;
    const refused =
      spoiledBy(product, spell, milestone) ?? (endless ? outsideLimits(product, spell) : undefined);
    if (refused) return refused;
    const pace = rests
      ? Number.POSITIVE_INFINITY
      : slowing(product.mechanism, milestone, base, spell, relativeThickness)[end];
    rested ||= cold;
    if (left * pace <= room)
      return answer({ spell: index, into: into + left * pace, at: at + left * pace, rested });
    left -= room / pace;
    at += room;
    index += 1;
    into = 0;
  }
};
