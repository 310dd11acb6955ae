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
  | { readonly kind: 'back'; readonly minutes: number; readonly says: string }
  | { readonly kind: 'ahead'; readonly minutes: number; readonly says: string }
  | { readonly kind: 'unset'; readonly says: string };

/** Minutes that the clock of the device has gone back since it was last read; 0 where it has not. */
export const jumpedBack = (seenAt: number, now: number): number =>
  seenAt > now + LITTLE ? Math.round((seenAt - now) / MINUTE_MS) : 0;

/**
 * Whether the device's clock is to be doubted at `now`, having last been read at `seenAt` (0: never), epoch
 * milliseconds; nothing where it is not. Until she has said that it is right, no time is to be told by it.
 */
export const clockDoubt = (seenAt: number, now: number, style: TimeStyle): ClockDoubt | undefined => {
  const shown = (at: number) => sayInstant(at, now === at ? 0 : now, style);
  if (now < FIRST_YEAR)
    return {
      kind: 'unset',
      says: `This device says it is ${shown(now)}. Set its clock first; until then no time is told.`,
    };
  if (seenAt <= 0) return undefined;
  const back = jumpedBack(seenAt, now);
  if (back)
    return {
      kind: 'back',
      minutes: back,
      says: `The clock of this device has gone back: it was ${sayInstant(seenAt, now, style)} already. Set it right, or say that it is right now; until then no time is told.`,
    };
  // A clock that was never set until now: what it noted then tells nothing.
  if (now - seenAt < LONG_AWAY) return undefined;
  return {
    kind: 'ahead',
    minutes: Math.round((now - seenAt) / MINUTE_MS),
    says: `The clock of this device was last read on ${sayInstant(seenAt, now, style)}, and now it says ${shown(now)}. Is that right? If it is not, set it; until then no time is told.`,
  };
};

/** A coat noted under a clock that was not set: nothing can be told from its time. */
export const laidBeforeClocks = (laidAt: number): boolean => laidAt < FIRST_YEAR;
