import { toCelsius } from '#engine/calc/units.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import type { Calendar } from '#engine/schedule.ts';

/** The calendar of this device: day 0 holds the instant. */
export const calendarAt = (at: number): Calendar => {
  const day = new Date(at);
  return {
    at: (days, minute) =>
      new Date(day.getFullYear(), day.getMonth(), day.getDate() + days, 0, minute).getTime(),
    weekday: day.getDay(),
  };
};

const numberIn = (plan: URLSearchParams, name: string): number | undefined => {
  const text = plan.get(name)?.trim().replace(',', '.');
  const value = text ? Number(text) : Number.NaN;
  return Number.isNaN(value) ? undefined : value;
};

/** The nights of a card: its own, or those of the plan that it was made of before cards held them. */
export const nightOfCard = ({ night, plan }: JobCard): JobCard['night'] => {
  if (night || !plan) return night;
  const draft = new URLSearchParams(plan);
  const told = numberIn(draft, 'night');
  if (told === undefined) return undefined;
  const celsius = draft.get('units') === 'us' ? toCelsius(told) : told;
  const humidity = numberIn(draft, 'night-humidity');
  if (!(celsius >= -30 && celsius <= 50)) return undefined;
  const known = humidity !== undefined && humidity >= 0 && humidity <= 100;
  return { celsius, ...(known && { relativeHumidity: humidity / 100 }) };
};
