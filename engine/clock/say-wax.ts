import { type NowWords, plain, until } from './now-words.ts';
import type { Moment, Running } from './reading.ts';
import { saySpan, type TimeStyle } from './say-time.ts';

/** What is said of a wax until it bears the next coat: wiped back at once, buffed by its look, then left to harden. */
export const sayWax = (
  { moments, wipeOff, handsOff }: Running,
  buff: Moment,
  now: number,
  style: TimeStyle,
): NowWords => {
  if (wipeOff)
    return plain({
      doing: 'wipe-back',
      verdict: 'Wipe the surplus off now',
      why: `With a clean cloth, end to end: what stays too thick only smears. Then hands off until it is dull and no longer cool, ${saySpan(buff.from, buff.to, now, style)}, and buff it.`,
    });
  if (handsOff)
    return until(
      'leave',
      'Hands off',
      handsOff,
      'Once it is dull all over and no longer cool to a hand on a hidden corner, buff it with clean dry cotton. Go by that, not by the clock.',
      now,
      style,
    );
  return until(
    'wait',
    'Buff it, then leave it',
    moments.recoat,
    'Buff it once it is dull and no longer cool: clean dry cotton, refolded often. If the cloth drags and no shine comes, a little fresh wax of the same kind softens it. Once it is buffed it only has to harden.',
    now,
    style,
  );
};
