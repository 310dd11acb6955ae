import { found, short, type Wants } from './found.ts';

const DAY = /^(\d{1,4})([./-])(\d{1,2})\2(\d{1,4})$/;
/** Days of a month from 1 on: the day before the first of the next. */
const daysIn = (year: number, month: number): number => new Date(Date.UTC(year, month, 0)).getUTCDate();
const A_DAY = 'write the day as year-month-day: 2026-11-28 is November 28, 2026';

/** `28.11.2026` or `last week` where a day is wanted. */
export const dayWanted = (value: unknown): Wants => {
  const text = String(value);
  const [, one = '', mark, two = '', three = ''] = DAY.exec(text) ?? [];
  if (!mark) return { what: `"${short(text)}", which is no date, stands`, wants: A_DAY };
  const isOrdered = one.length === 4;
  const [year, month, date] = isOrdered
    ? [one, two, three]
    : mark === '/'
      ? [three, one, two]
      : [three, two, one];
  const none =
    Number(month) < 1 || Number(month) > 12
      ? `there is no month ${Number(month)}`
      : Number(date) < 1 || Number(date) > daysIn(Number(year), Number(month))
        ? `that month has no day ${Number(date)}`
        : undefined;
  if (none) return { what: `"${text}", which is no day of the calendar (${none}), stands`, wants: A_DAY };
  const right = `${year}-${month.padStart(2, '0')}-${date.padStart(2, '0')}`;
  return {
    what: found(value),
    wants: isOrdered ? `write ${right}` : `write the year first: ${right}`,
  };
};
