import ical, { ICalAlarmType } from 'ical-generator';
import type { Reminder } from '#engine/clock.ts';
import { MINUTE_MS } from '#engine/plain/time.ts';

/** The reminders of one coat as a calendar file: a quarter of an hour each, ringing at its start. */
export const reminderFile = (reminders: readonly Reminder[], coat: string, now: number): string => {
  const calendar = ical({ name: 'Halfdry', prodId: '//Halfdry//Coat clock//EN' });
  for (const { key, at, title, detail } of reminders)
    calendar.createEvent({
      id: `${coat}-${key}@halfdry`,
      stamp: new Date(now),
      start: new Date(at),
      end: new Date(at + 15 * MINUTE_MS),
      summary: title,
      description: detail,
      alarms: [{ type: ICalAlarmType.display, trigger: 0 }],
    });
  return calendar.toString();
};
