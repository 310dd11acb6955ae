import { type Span, sayEnds } from './span.ts';
import { DAY_MIN, HOUR_MIN } from './time.ts';

/** What a time is said in: how many minutes one is, and its words. */
const UNITS = {
  min: { minutes: 1, short: ['min', 'min'], long: ['minute', 'minutes'] },
  h: { minutes: HOUR_MIN, short: ['h', 'h'], long: ['hour', 'hours'] },
  day: { minutes: DAY_MIN, short: ['day', 'days'], long: ['day', 'days'] },
} as const;

export type TimeUnit = keyof typeof UNITS;

/** From here on, minutes, a time is said in hours, and in days. Nothing at all is hours. */
const HOURS_FROM = 2 * HOUR_MIN;
const DAYS_FROM = 2 * DAY_MIN;

/** The unit that people say so many minutes in; one who takes hours sooner says from where. */
export const unitOf = (minutes: number, hoursFrom = HOURS_FROM): TimeUnit => {
  if (minutes > 0 && minutes < hoursFrom) return 'min';
  return minutes < DAYS_FROM ? 'h' : 'day';
};

/** So many minutes counted in a unit. */
export const inUnit = (minutes: number, unit: TimeUnit): number => minutes / UNITS[unit].minutes;

/** As many digits as a time of a can is worth: one behind the point, below ten. */
const tenths = (value: number): number => Number(value.toFixed(value < 10 ? 1 : 0));

/** A span of minutes with the short name of its unit: `40 min`, `2 h`, `4–10 h`, `1 day`, `21–30 days`. */
export const sayShort = (
  { from, to }: Span,
  unit: TimeUnit = unitOf(to),
  round: (value: number) => number = tenths,
): string => {
  const words = sayEnds(round(inUnit(from, unit)), round(inUnit(to, unit)));
  return `${words} ${UNITS[unit].short[words === '1' ? 0 : 1]}`;
};

/** A count of a unit in whole words: `1 hour`, `1.5 hours`, `3 days`. */
export const sayLong = (count: number, unit: TimeUnit): string =>
  `${count} ${UNITS[unit].long[count === 1 ? 0 : 1]}`;
