import type { Units } from '../calc/units.ts';
import { DAY_MS, HOUR_MS, MINUTE_MS } from '../plain/time.ts';
import { dateFormat } from './format.ts';

/** How times are printed. Without a time zone, that of the device. */
export type TimeStyle = {
  readonly timeZone?: string | undefined;
  readonly hour12: boolean;
  /** Degrees as she chose them; the other ones stand behind. */
  readonly units?: Units | undefined;
};

/** From here on the hour would be false precision, and the day is told. */
const BY_DAY = { width: 30 * HOUR_MS, away: 60 * HOUR_MS } as const;

type Parts = Readonly<Record<string, string>>;

const partsOf = (at: number, { timeZone, hour12 }: TimeStyle): Parts => {
  const format = dateFormat({
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
  Math.round(Date.UTC(Number(year), Number(month) - 1, Number(day)) / DAY_MS);

const hands = ({ hour, minute }: Parts, { hour12 }: TimeStyle): string =>
  `${hour12 ? hour : (hour ?? '').padStart(2, '0')}:${minute}`;

/** Clocks are put back by an hour, in one place by half an hour. */
const PUT_BACK = [HOUR_MS, HOUR_MS / 2];

/** True where the hands show the same once more, before or after: the hour in which clocks are put back. */
const comesTwice = (at: number, parts: Parts, style: TimeStyle): boolean =>
  PUT_BACK.flatMap((by) => [at - by, at + by]).some((other) => {
    const there = partsOf(other, style);
    return (
      dayOf(there) === dayOf(parts) &&
      hands(there, style) === hands(parts, style) &&
      there['dayPeriod'] === parts['dayPeriod']
    );
  });

/** ` EDT`, or ` GMT+1`: what tells such an hour from the one that looks alike. */
const zoneOf = (at: number, { timeZone }: TimeStyle): string => {
  const parts = dateFormat({ timeZone, timeZoneName: 'short' }).formatToParts(at);
  return ` ${parts.find(({ type }) => type === 'timeZoneName')?.value ?? ''}`;
};

const half = ({ dayPeriod }: Parts): string => (dayPeriod ? ` ${dayPeriod}` : '');

const clockWords = (at: number, parts: Parts, style: TimeStyle): string =>
  `${hands(parts, style)}${half(parts)}${comesTwice(at, parts, style) ? zoneOf(at, style) : ''}`;

/** The day in words, with its year where that is not this one. */
const dateOf = (at: number, now: number, style: TimeStyle): string => {
  const { timeZone } = style;
  const year = partsOf(at, style)['year'] === partsOf(now, style)['year'] ? undefined : 'numeric';
  return dateFormat({
    timeZone,
    weekday: 'short',
    month: 'short',
    day: 'numeric',
    year,
  }).format(at);
};

/** The day, where it is not today. */
const dayWord = (at: number, now: number, style: TimeStyle): string => {
  const away = dayOf(partsOf(at, style)) - dayOf(partsOf(now, style));
  if (away === 0) return '';
  if (away === 1) return 'tomorrow ';
  return away === -1 ? 'yesterday ' : `${dateOf(at, now, style)}, `;
};

/** Both ends rounded up, so that no time is told before it comes: to the minute, of wide ranges to 5 or 30 of them. */
const upward = (from: number, to: number): [number, number] => {
  const step = to - from >= 6 * HOUR_MS ? 30 * MINUTE_MS : to - from >= HOUR_MS ? 5 * MINUTE_MS : MINUTE_MS;
  return [Math.ceil(from / step) * step, Math.ceil(to / step) * step];
};

const byDay = (from: number, to: number, now: number): boolean =>
  to - from >= BY_DAY.width || from - now >= BY_DAY.away;

/** One time: `3:05 PM`, `tomorrow 9:00 AM`, `Sat, Nov 28, 9:00 AM`. */
export const sayInstant = (at: number, now: number, style: TimeStyle): string => {
  const parts = partsOf(at, style);
  return `${dayWord(at, now, style)}${clockWords(at, parts, style)}`;
};

/** From–to, rounded up, with the day where it is not today; days alone where the hour would be a pretense. */
export const saySpan = (from: number, to: number, now: number, style: TimeStyle): string => {
  if (byDay(from, to, now)) {
    const days = [dateOf(from, now, style), dateOf(to, now, style)];
    return days[0] === days[1] ? `${days[0]}` : days.join(' – ');
  }
  const [early, late] = upward(from, to);
  if (early === late) return sayInstant(early, now, style);
  const [first, last] = [partsOf(early, style), partsOf(late, style)];
  const plain =
    dayOf(first) === dayOf(last) && !comesTwice(early, first, style) && !comesTwice(late, last, style);
  if (!plain) return `${sayInstant(early, now, style)} – ${sayInstant(late, now, style)}`;
  // Across noon the one mark tells both: 11:40–12:05 PM. Where the ends are far apart each has its own.
  const far = first['dayPeriod'] !== last['dayPeriod'] && late - early > HOUR_MS;
  return `${dayWord(early, now, style)}${hands(first, style)}${far ? half(first) : ''}–${hands(last, style)}${half(last)}`;
};

/** When it is over: `late` for sure, `early` perhaps; nothing where that has passed or is the same. */
export type UntilWords = { readonly late: string; readonly early: string | undefined };

/** The late end first and large, since only it is sure. */
export const untilOf = (from: number, to: number, now: number, style: TimeStyle): UntilWords => {
  if (byDay(from, to, now)) {
    const [early, late] = [dateOf(from, now, style), dateOf(to, now, style)];
    return { late, early: from <= now || early === late ? undefined : early };
  }
  const [early, late] = upward(from, to);
  const surely = sayInstant(late, now, style);
  if (from <= now || early >= late) return { late: surely, early: undefined };
  const [first, last] = [partsOf(early, style), partsOf(late, style)];
  if (dayOf(first) !== dayOf(last)) {
    const today = dayOf(first) === dayOf(partsOf(now, style)) ? 'today ' : '';
    return { late: surely, early: `${today}${sayInstant(early, now, style)}` };
  }
  return { late: surely, early: clockWords(early, first, style) };
};

/** The early end behind a late one: `7:55 PM at the earliest`. */
export const atEarliest = (early: string): string => `${early} at the earliest`;

/** For ‘hands off until …’: `11:45 PM, 7:55 PM at the earliest`. */
export const sayUntil = (from: number, to: number, now: number, style: TimeStyle): string => {
  const { late, early } = untilOf(from, to, now, style);
  return early ? `${late}, ${atEarliest(early)}` : late;
};
