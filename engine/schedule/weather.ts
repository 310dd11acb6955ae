import type { History, Spell } from '../calc/drying/history.ts';
import { saturationPascals } from '../calc/saturation-pressure.ts';
import { vaporPascals } from '../calc/vapor-pressure-deficit.ts';
import type { Plan } from '../model/plan.ts';
import { DAY_MS, MINUTE_MS } from '../plain/time.ts';
import type { Calendar, Job } from './job.ts';
import type { Stretch } from './windows.ts';

/** What the air of a place depends on. */
export type Air = Pick<Job, 'day' | 'night' | 'hours'>;
/** The tables that tell when night is, and how damp. */
export type NightTable = Pick<Plan, 'night'>;

type Climate = { readonly celsius: number; readonly relativeHumidity: number };

/**
 * The air by night. Where she measured no humidity it holds the water of the day, so it is damper the colder it is,
 * up to the most in the tables: walls and wood take some of it up.
 */
export const nightOf = (plan: NightTable, { day, night }: Air): Climate => ({
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
