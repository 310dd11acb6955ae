import type { ClockWords } from '../model/clock-words.ts';
import { filled } from '../plain/filled.ts';
import { type NowWords, plain, until } from './now-words.ts';
import type { Moment, Running } from './reading.ts';
import { saySpan, type TimeStyle } from './say-time.ts';

/** What is said of a wax until it bears the next coat: wiped back at once, buffed by its look, then left to harden. */
export const sayWax = (
  { wax, 'hands-off': off }: ClockWords,
  { moments, wipeOff, handsOff }: Running,
  buff: Moment,
  now: number,
  style: TimeStyle,
): NowWords => {
  if (wipeOff)
    return plain({
      doing: 'wipe-back',
      verdict: wax.wipe,
      why: filled(wax['wipe-how'], { dull: saySpan(buff.from, buff.to, now, style) }),
    });
  if (handsOff) return until('leave', off.verdict, handsOff, wax['hands-off'], now, style);
  return until('wait', wax.buff, moments.recoat, wax['buff-how'], now, style);
};
