import { MINUTE } from './reading.ts';

/** How times are printed. Without a time zone, that of the device. */
export type TimeStyle = { readonly timeZone?: string | undefined; readonly hour12: boolean };

const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;
/** From here on the hour would be false precision, and the day is told. */
const BY_DAY = { width: 30 * HOUR, away: 60 * HOUR } as const;

type Parts = Readonly<Record<string, string>>;

const partsOf = (at: number, { timeZone, hour12 }: TimeStyle): Parts => {
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone,
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: '2-digit',
    hourCycle: hour12 ? 'h12' : 'h23',
  });
  return Object.fromEntries(format.formatToParts(at).map(({ type, value }) => [type, value]));
};

/** Days since an old midnight, by the calendar of the place: an hour lost or won makes no difference. */
const dayOf = ({ year, month, day }: Parts): number =>
  Math.round(Date.UTC(Number(year), Number(month) - 1, Number(day)) / DAY);

const hands = ({ hour, minute }: Parts, { hour12 }: TimeStyle): string =>
  `${hour12 ? hour : (hour ?? '').padStart(2, '0')}:${minute}`;

const half = ({ dayPeriod }: Parts): string => (dayPeriod ? ` ${dayPeriod}` : '');

const dateOf = (at: number, { timeZone }: TimeStyle): string =>
  new Intl.DateTimeFormat('en-US', { timeZone, weekday: 'short', month: 'short', day: 'numeric' }).format(at);

/** The day, where it is not today. */
const dayWord = (at: number, now: number, style: TimeStyle): string => {
  const away = dayOf(partsOf(at, style)) - dayOf(partsOf(now, style));
  if (away === 0) return '';
  if (away === 1) return 'tomorrow ';
  return away === -1 ? 'yesterday ' : `${dateOf(at, style)}, `;
};

const outward = (from: number, to: number): [number, number] => {
  const step = to - from >= 6 * HOUR ? 30 * MINUTE : to - from >= HOUR ? 5 * MINUTE : MINUTE;
  return [Math.floor(from / step) * step, Math.ceil(to / step) * step];
};

/** One time: `3:05 PM`, `tomorrow 9:00 AM`, `Sat, Nov 28, 9:00 AM`. */
export const sayInstant = (at: number, now: number, style: TimeStyle): string => {
  const parts = partsOf(at, style);
  return `${dayWord(at, now, style)}${hands(parts, style)}${half(parts)}`;
};

/** From–to, rounded outward, with the day where it is not today; days alone where the hour would be a pretense. */
export const saySpan = (from: number, to: number, now: number, style: TimeStyle): string => {
  if (to - from >= BY_DAY.width || from - now >= BY_DAY.away) {
    const days = [dateOf(from, style), dateOf(to, style)];
    return days[0] === days[1] ? `${days[0]}` : days.join(' – ');
  }
  const [early, late] = outward(from, to);
  if (early === late) return sayInstant(early, now, style);
  const [first, last] = [partsOf(early, style), partsOf(late, style)];
  const sameDay = dayOf(first) === dayOf(last);
  if (!sameDay) return `${sayInstant(early, now, style)} – ${sayInstant(late, now, style)}`;
  // Across noon the one mark tells both: 11:40–12:05 PM. Where the ends are far apart each has its own.
  const far = first['dayPeriod'] !== last['dayPeriod'] && late - early > HOUR;
  return `${dayWord(early, now, style)}${hands(first, style)}${far ? half(first) : ''}–${hands(last, style)}${half(last)}`;
};

/** For 'hands off until …': the early end is left out once it has passed, since only the late one is sure. */
export const sayUntil = (from: number, to: number, now: number, style: TimeStyle): string =>
  from <= now ? saySpan(to, to, now, style) : saySpan(from, to, now, style);
