import type { ClockWords } from '../model/clock-words.ts';
import { filled } from '../plain/filled.ts';
import { DAY_MS, MINUTE_MS } from '../plain/time.ts';
import { sayInstant, type TimeStyle } from './say-time.ts';

/** Phones and watches are set by a minute or two. */
const LITTLE = 2 * MINUTE_MS;
/** Not looked at for so long, the device more likely got a wrong date than the coats nobody. Our own choice. */
const LONG_AWAY = 60 * DAY_MS;
/** No clock ran here before: 1 January 2020. A device that has lost its time shows 1970, or when it was made. */
const FIRST_YEAR = Date.UTC(2020, 0, 1);

/** A clock of the device that can not be right, or may not be. `minutes` by which it is off, where that is known. */
export type ClockDoubt =
  | { readonly kind: 'back' | 'ahead'; readonly minutes: number; readonly seenAt: number }
  | { readonly kind: 'unset' };

/** Minutes that the clock of the device has gone back since it was last read; 0 where it has not. */
export const jumpedBack = (seenAt: number, now: number): number =>
  seenAt > now + LITTLE ? Math.round((seenAt - now) / MINUTE_MS) : 0;

/**
 * Whether the device's clock is to be doubted at `now`, having last been read at `seenAt` (0: never), epoch
 * milliseconds; nothing where it is not. Until she has said that it is right, no time is to be told by it.
 */
export const clockDoubt = (seenAt: number, now: number): ClockDoubt | undefined => {
  if (now < FIRST_YEAR) return { kind: 'unset' };
  if (seenAt <= 0) return undefined;
  const back = jumpedBack(seenAt, now);
  if (back) return { kind: 'back', minutes: back, seenAt };
  // A clock that was never set until now: what it noted then tells nothing.
  if (now - seenAt < LONG_AWAY) return undefined;
  return { kind: 'ahead', minutes: Math.round((now - seenAt) / MINUTE_MS), seenAt };
};

/** Why a clock is doubted, and what to do; times are shown with their day. */
export const sayDoubt = (
  { device }: Pick<ClockWords, 'device'>,
  doubt: ClockDoubt,
  now: number,
  style: TimeStyle,
): string => {
  const shown = sayInstant(now, 0, style);
  if (doubt.kind === 'unset') return filled(device.unset, { now: shown });
  const seen = sayInstant(doubt.seenAt, now, style);
  return doubt.kind === 'back' ? filled(device.back, { seen }) : filled(device.ahead, { seen, now: shown });
};

/** A coat noted under a clock that was not set: nothing can be told from its time. */
export const laidBeforeClocks = (laidAt: number): boolean => laidAt < FIRST_YEAR;
