import type { Climate } from '../calc/drying/climate.ts';
import { type History, type Spell, steady } from '../calc/drying/history.ts';
import { saturationPascals } from '../calc/saturation-pressure.ts';
import { vaporPascals } from '../calc/vapor-pressure-deficit.ts';
import type { Plan } from '../model/plan.ts';
import type { Span } from '../plain/span.ts';
import { DAY_MIN, DAY_MS, MINUTE_MS, type Stretch } from '../plain/time.ts';
import type { LaidCoat } from './coat.ts';
import { dateFormat } from './format.ts';

/** The coldest air of the nights. Where no humidity was measured, it holds the water of the day. */
export type ColdestNight = {
  readonly celsius: number;
  readonly relativeHumidity?: number | undefined;
};

/** The calendar of the place: day 0 holds an instant. A clock change moves `at`, never a drying time. */
export type Calendar = {
  readonly at: (day: number, minute: number) => number;
  /** Of day 0, from Sunday 0. */
  readonly weekday: number;
};

/** What the air of a place depends on. */
export type Air = {
  readonly day: Climate;
  readonly night: ColdestNight;
  /** Minutes of the day in which someone works there. */
  readonly hours: Span;
};
/** The tables that tell when night is, and how damp. */
export type NightTable = { readonly night: Pick<Plan['night'], 'from' | 'to' | 'most-humidity'> };

/** The same where no tables are at hand: on the clock, and before a coat is laid. */
export const USUAL_NIGHT: NightTable = { night: { from: 1260, to: 420, 'most-humidity': 0.95 } };

/**
 * The air by night. Where she measured no humidity it holds the water of the day, so it is damper the colder it is,
 * up to the most in the tables: walls and wood take some of it up.
 */
export const nightOf = (plan: NightTable, { day, night }: Pick<Air, 'day' | 'night'>) => ({
  celsius: night.celsius,
  relativeHumidity:
    night.relativeHumidity ??
    Math.min(plan.night['most-humidity'], vaporPascals(day) / saturationPascals(night.celsius)),
});

/** When night begins and ends on a day; hours in which she works count as day. */
const borders = (plan: NightTable, { hours }: Air) => ({
  dawn: Math.min(plan.night.to, hours.from),
  dusk: Math.max(plan.night.from, hours.to),
});

/** The nights that touch a stretch of time, the calendar's day of each evening with it. */
export const nightsIn = (
  plan: NightTable,
  job: Air,
  calendar: Calendar,
  { from, to }: Stretch,
): readonly Stretch[] => {
  const { dawn, dusk } = borders(plan, job);
  const nights: Stretch[] = [];
  for (let day = -1; calendar.at(day, dusk) < to; day++) {
    const night = { from: calendar.at(day, dusk), to: calendar.at(day + 1, dawn) };
    if (night.to > from && night.from < to) nights.push(night);
  }
  return nights;
};

/** The weather from an instant on, day and night by turns for `days`, then as by day. */
export const historyFrom = (
  plan: NightTable,
  job: Air,
  calendar: Calendar,
  at: number,
  days: number,
): History => {
  const night = nightOf(plan, job);
  const until = at + days * DAY_MS;
  const spells: Spell[] = [];
  let now = at;
  for (const { from, to } of nightsIn(plan, job, calendar, { from: at, to: until })) {
    if (from > now) spells.push({ ...job.day, minutes: (from - now) / MINUTE_MS });
    const start = Math.max(from, now);
    spells.push({ ...night, minutes: (to - start) / MINUTE_MS });
    now = to;
  }
  const last = { ...job.day, minutes: Number.POSITIVE_INFINITY };
  const [first = last, ...rest] = [...spells, last];
  return [first, ...rest];
};

/** What the air of a coat is told by. */
type InAir = Pick<LaidCoat, 'laidAt' | 'celsius' | 'relativeHumidity' | 'surfaceCelsius'>;
/** Days of day and night after a coat, as in the schedule; what is not over then goes on as by day. */
const HORIZON_DAYS = 90;

/**
 * The air that a coat dries in, day and night by turns as the schedule has them, the day as when it was laid. Where the
 * nights are the same air, it is the same all along. Clock, card, form and care card all reckon with it.
 */
export const airAfter = (
  plan: NightTable,
  { laidAt, celsius, relativeHumidity, surfaceCelsius }: InAir,
  night: ColdestNight,
  calendar: (at: number) => Calendar,
): History => {
  const day = { celsius, relativeHumidity, surfaceCelsius };
  const alike =
    night.celsius === day.celsius &&
    (night.relativeHumidity ?? day.relativeHumidity) === day.relativeHumidity;
  if (alike) return steady(day);
  // Nobody told working hours: night is then what the tables say.
  const hours = { from: plan.night.to, to: plan.night.from };
  return historyFrom(plan, { day, night, hours }, calendar(laidAt), laidAt, HORIZON_DAYS);
};

/** Minutes since midnight, and the day of the week from Sunday on, by the clocks of the place. */
const handsAt = (at: number, timeZone: string | undefined): { minute: number; weekday: string } => {
  const format = dateFormat({
    timeZone,
    weekday: 'short',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  });
  const parts = Object.fromEntries(format.formatToParts(at).map(({ type, value }) => [type, value]));
  return { minute: Number(parts['hour']) * 60 + Number(parts['minute']), weekday: parts['weekday'] ?? '' };
};
const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];

/** The calendar of the device, or of the zone that is named: what the clock counts nights by. */
export const calendarIn =
  (timeZone?: string) =>
  (at: number): Calendar => {
    const { minute: now, weekday } = handsAt(at, timeZone);
    const midnight = Math.floor(at / MINUTE_MS) * MINUTE_MS - now * MINUTE_MS;
    return {
      at: (day, minute) => {
        const there = midnight + day * DAY_MS + minute * MINUTE_MS;
        // Where clocks were changed meanwhile, the hands show another time than was asked for.
        const off = (((handsAt(there, timeZone).minute - minute) % DAY_MIN) + DAY_MIN) % DAY_MIN;
        return there - (off > DAY_MIN / 2 ? off - DAY_MIN : off) * MINUTE_MS;
      },
      weekday: WEEKDAYS.indexOf(weekday),
    };
  };
