import type { Span } from './span.ts';

/** From one instant to another, epoch milliseconds. */
export type Stretch = Span;

/** The later of both, at either end. */
export const later = (one: Stretch, two: Stretch): Stretch => ({
  from: Math.max(one.from, two.from),
  to: Math.max(one.to, two.to),
});

/** Milliseconds, in which instants are counted. */
export const MINUTE_MS = 60_000;
export const HOUR_MS = 60 * MINUTE_MS;
export const DAY_MS = 24 * HOUR_MS;

/** Minutes, in which cans promise and films are reckoned. */
export const HOUR_MIN = 60;
export const DAY_MIN = 24 * HOUR_MIN;

/** Hours, in which waits are written. */
export const DAY_HOURS = 24;
