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
