import type { Printed } from '../calc/drying/milestone.ts';
import { MINUTE_MS } from '../plain/time.ts';
import type { Moment } from './reading.ts';
import { sayInstant, saySpan, type TimeStyle } from './say-time.ts';

/**
 * One moment of a coat in a row of times. Of a promise both ends, and once it is surely over since when; of a deadline
 * the early end alone, which is the day to keep to.
 */
export const sayMoment = (
  milestone: Printed,
  { from, to }: Pick<Moment, 'from' | 'to'>,
  now: number,
  style: TimeStyle,
): string => {
  if (milestone === 'sand-if-beyond')
    return now >= from ? `since ${sayInstant(from, now, style)}` : sayInstant(from, now, style);
  // Both ends count to the minute, however far apart they are; the late one is not told before it comes.
  const over = Math.ceil(to / MINUTE_MS) * MINUTE_MS;
  if (milestone === 'no-coat') return `${sayInstant(from, now, style)} to ${sayInstant(over, now, style)}`;
  return now >= to ? `since ${sayInstant(to, now, style)}` : saySpan(from, to, now, style);
};
