import { sayShort } from '#engine/plain/say-span.ts';
import { sayEnds, spanOf } from '#engine/plain/span.ts';
import { DAY_HOURS, HOUR_MIN } from '#engine/plain/time.ts';

/** From–to with a unit, or one number where both are the same. */
export const span = ([from, to]: readonly [number, number], unit: string): string =>
  `${sayEnds(from, to)} ${unit}`;

/** A wait of so many hours in the unit that people say it in: minutes up to an hour, days from two days on. */
export const waitWords = ([from, to]: readonly [number, number]): string => {
  const wait = spanOf([from, to], HOUR_MIN);
  const inDays = to > 2 * DAY_HOURS;
  if (from === 0) {
    const most = { from: wait.to, to: wait.to };
    return `up to ${inDays ? sayShort(most, 'day', Math.ceil) : sayShort(most, 'h')}`;
  }
  if (to <= 1) return sayShort(wait, 'min', Math.round);
  if (from < 1) return `${Math.round(wait.from)} min–${to} h`;
  return inDays && from >= DAY_HOURS ? sayShort(wait, 'day', Math.round) : sayShort(wait, 'h');
};
