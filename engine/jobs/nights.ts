import { type History, steady } from '../calc/drying/history.ts';
import { climateOf, type LaidCoat } from '../clock/coat.ts';
import type { JobCard } from '../model/job-card.ts';
import type { Calendar } from '../schedule/job.ts';
import { historyFrom, type NightTable } from '../schedule/weather.ts';

export type Night = NonNullable<JobCard['night']>;

/** Days of day and night after the last coat, as in the schedule; what is not over then goes on as by day. */
const HORIZON_DAYS = 90;

/** The nights that are allowed for where none is noted: never colder than what the can allows. */
export const supposedNight = (plan: NightTable, { celsius }: LaidCoat, least: number): Night => ({
  celsius: Math.max(celsius - plan.night['supposed-colder'], Math.min(celsius, least)),
});

/**
 * The air that a coat dries in, day and night by turns as the schedule has them, the day as when it was laid. Where the
 * nights are the same air, it is the same all along.
 */
export const airAfter = (
  plan: NightTable,
  coat: LaidCoat,
  night: Night,
  calendar: (at: number) => Calendar,
): History => {
  const day = climateOf(coat);
  const alike =
    night.celsius === day.celsius &&
    (night.relativeHumidity ?? day.relativeHumidity) === day.relativeHumidity;
  if (alike) return steady(day);
  // A card knows no working hours: night is then what the tables say.
  const hours = { from: plan.night.to, to: plan.night.from, days: [] };
  return historyFrom(plan, { day, night, hours }, calendar(coat.laidAt), coat.laidAt, HORIZON_DAYS);
};
