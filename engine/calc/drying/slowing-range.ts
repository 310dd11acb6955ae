import type { Span } from '../../plain/span.ts';

/** How many times longer a step takes, from–to. Exactly 1–1 where nothing has changed. */
export type Slowing = Span;

export const ordered = (one: number, two: number): Slowing => ({
  from: Math.min(one, two),
  to: Math.max(one, two),
});

/** Two ranges one after another; both ends may meet. */
export const times = (one: Slowing, two: Slowing): Slowing => ({
  from: one.from * two.from,
  to: one.to * two.to,
});

/** Independent doubts do not add up: half widths on a log scale join as the sides of a right triangle. */
export const together = (one: Slowing, two: Slowing): Slowing => {
  const middle = Math.sqrt(one.from * one.to * two.from * two.to);
  const half = Math.hypot(Math.log(one.to / one.from), Math.log(two.to / two.from)) / 2;
  return { from: middle * Math.exp(-half), to: middle * Math.exp(half) };
};

/**
 * Draws both ends in alike, until half the width over the middle, (to − from) / (to + from), is no more than `part`.
 */
export const narrowed = ({ from, to }: Slowing, part: number): Slowing => {
  const middle = Math.sqrt(from * to);
  const spread = Math.exp(Math.atanh(part));
  return { from: Math.max(from, middle / spread), to: Math.min(to, middle * spread) };
};
