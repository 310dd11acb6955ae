import type { HeardFact } from './heard.ts';

const HOUR = String.raw`(\d{1,2})(?::(\d{2}))?\s*([ap])\.?m\b`;
const LAID = new RegExp(
  String.raw`\b(?:laid|put|brushed|rolled|sprayed|applied|coated|wiped|did)\b[^.!?\n]{0,40}?\b(?:at|around|about)\s+${HOUR}`,
  'i',
);
const NOW = new RegExp(String.raw`\b(?:it['’]?s|it is|now)\s+(?:now\s+|about\s+|like\s+)?${HOUR}`, 'i');
/** Told of another day, two hours of the clock are no span of today. */
const OTHER_DAY =
  /\b(?:yesterday|last|ago|night|days?|weeks?|monday|tuesday|wednesday|thursday|friday|saturday|sunday)\b/i;
/** Nobody looks at the clock to the minute. */
const EITHER_WAY = 0.4;

const hourOf = ([, hour = '0', minute = '0', half = 'a']: RegExpExecArray): number =>
  (Number(hour) % 12) + Number(minute) / 60 + (half.toLowerCase() === 'p' ? 12 : 0);

/** "Laid it at 2 pm, it's 5 pm now": hours between two times of the same day. */
export const hoursByClock = (text: string): HeardFact[] => {
  const [laid, now] = [LAID.exec(text), NOW.exec(text)];
  if (!laid || !now || OTHER_DAY.test(text)) return [];
  const hours = hourOf(now) - hourOf(laid);
  if (hours <= 0) return [];
  return [
    {
      fact: 'hours-since-coat',
      value: hours,
      range: [Math.max(0, hours - EITHER_WAY), hours + EITHER_WAY],
      sure: 0.85,
      rests: [laid, now].map((found) => ({ from: found.index, to: found.index + found[0].length })),
      against: [],
    },
  ];
};
