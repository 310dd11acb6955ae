import { dateFormat, sayInstant } from '#engine/clock.ts';
import { type Units, unitsOf } from './form/units.ts';
import { recall } from './storage.ts';
import { timeStyle } from './time-style.ts';

const inWords = (options: Intl.DateTimeFormatOptions) => (at: number) => dateFormat(options).format(at);

/** `Mon, Nov 23, 2026`: a date that still tells its year in a year. */
export const sayDate = inWords({ weekday: 'short', year: 'numeric', month: 'short', day: 'numeric' });

/** `Mon, Nov 23`: a day of this year. */
export const sayDay = inWords({ weekday: 'short', month: 'short', day: 'numeric' });

/** The date with the time of day. */
export const sayDateTime = (at: number): string => `${sayDate(at)}, ${sayTime(at)}`;

export const sayTime = (at: number): string => sayInstant(at, at, timeStyle());

/** From–to as it may stand on paper: the weekday wherever it is not that of `on`, never 'tomorrow'. */
export const spanOn = (on: number, from: number, to: number): string => {
  const at = (instant: number, beside: number) =>
    sayDay(instant) === sayDay(beside) ? sayTime(instant) : `${sayDay(instant)}, ${sayTime(instant)}`;
  return from === to ? at(from, on) : `${at(from, on)} – ${at(to, from)}`;
};

/** The units of the page: those that were chosen on a form, else those of the device’s language. */
export const pageUnits = (): Units => {
  const kept = recall('clock-form')?.draft['units'];
  return kept === 'us' || kept === 'metric' ? kept : unitsOf(navigator.language);
};

/** `Monday, November 23, 2026`: a date in words, for paper that others read. */
export const sayLongDate = inWords({ weekday: 'long', year: 'numeric', month: 'long', day: 'numeric' });
