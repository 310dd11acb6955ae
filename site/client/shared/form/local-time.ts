import { MINUTE_MS } from '#engine/plain/time.ts';

const WRITTEN = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)(?::\d\d(?:\.\d+)?)?$/;
const two = (value: number): string => String(value).padStart(2, '0');
/** Clocks are moved by an hour, on Lord Howe Island by half of one. */
const MOVED = [0, 30, 60].map((minutes) => minutes * MINUTE_MS);

/** An instant as a field for day and time writes it, on this device. */
export const localText = (at: number): string => {
  const date = new Date(at);
  if (Number.isNaN(date.getTime())) return '';
  const year = String(date.getFullYear()).padStart(4, '0');
  return `${year}-${two(date.getMonth() + 1)}-${two(date.getDate())}T${two(date.getHours())}:${two(date.getMinutes())}`;
};

/**
 * The instants that a field for day and time may mean, earliest first: two in the hour that comes twice when clocks go
 * back, none in the hour that is left out when they go forward, or where it is no time.
 */
export const instantsOf = (text: string): readonly number[] => {
  const [, year, month, day, hour, minute] = (WRITTEN.exec(text) ?? []).map(Number);
  if (year === undefined || month === undefined || day === undefined || hour === undefined) return [];
  const date = new Date(2000, 0, 1);
  date.setFullYear(year, month - 1, day);
  date.setHours(hour, minute, 0, 0);
  const written = text.slice(0, 16);
  const near = MOVED.flatMap((by) => [date.getTime() - by, date.getTime() + by]);
  return [...new Set(near)].filter((at) => localText(at) === written).sort((one, two) => one - two);
};

/** Which of its two hours an instant lies in; nothing where its hour comes once. */
export const whichOf = (at: number): 'first' | 'second' | undefined => {
  const all = instantsOf(localText(at));
  if (all.length < 2) return undefined;
  return Math.abs((all[0] ?? at) - at) < MINUTE_MS ? 'first' : 'second';
};
