import type { Calendar } from '../clock/nights.ts';
import { MINUTE_MS, type Stretch } from '../plain/time.ts';
import type { Job } from './job.ts';

const DAYS = 7;

/** Her working hours from day 0 on, one after another. Nothing where no day of the week is hers. */
function* windows({ hours }: Job, calendar: Calendar): Generator<Stretch> {
  if (!hours.days.some(Boolean)) return;
  for (let day = 0; ; day++)
    if (hours.days[(calendar.weekday + day) % DAYS])
      yield { from: calendar.at(day, hours.from), to: calendar.at(day, hours.to) };
}

/**
 * The first stretch of `minutes` inside her hours that does not begin before `ready`; nothing where none is long
 * enough.
 */
export const firstFit = (
  job: Job,
  calendar: Calendar,
  ready: number,
  minutes: number,
): Stretch | undefined => {
  if (job.hours.to - job.hours.from < minutes) return undefined;
  for (const window of windows(job, calendar)) {
    const from = Math.max(window.from, ready);
    const to = from + minutes * MINUTE_MS;
    if (to <= window.to) return { from, to };
  }
  return undefined;
};

/** The day of the calendar in which an instant lies. */
export const dayOf = (calendar: Calendar, at: number): number => {
  let day = 0;
  while (calendar.at(day + 1, 0) <= at) day += 1;
  return day;
};
