import type { HeardFact } from './heard.ts';

const NAMED = [
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];
const NUMBER = String.raw`(?<hour>\d{1,2}|${NAMED.join('|')})(?::(?<minute>\d{2}))?`;
/** An hour with its half of the day, or one that stands alone: "at seven this morning", "at 9 o'clock". */
const HOUR = String.raw`(?:(?<noon>noon|midday)|${NUMBER}\s*(?:(?<half>[ap])\.?m\b|(?:o['’]?\s?clock)?(?=\s*(?:[.,;!?]|$|(?:and|now|this|in the|it|its)\b))(?:\s*(?:this|in the) (?<day>morning|afternoon|evening))?))`;
const LAID = new RegExp(
  String.raw`\b(?:laid|put|brushed|rolled|sprayed|applied|coated|wiped|did)\b[^.!?\n]{0,40}?\b(?:at|around|about)\s+${HOUR}`,
  'i',
);
const NOW = new RegExp(
  String.raw`\b(?:it['’]?s|it is|now)\s+(?:now\s+|it['’]?s\s+|it is\s+|about\s+|like\s+)*${HOUR}`,
  'i',
);
/** Told of another day, two hours of the clock are no span of today. */
const OTHER_DAY =
  /\b(?:yesterday|last|ago|night|days?|weeks?|monday|tuesday|wednesday|thursday|friday|saturday|sunday)\b/i;
/** Nobody looks at the clock to the minute. */
const EITHER_WAY = 0.4;
const HALF_A_DAY = 12;

type Clock = { readonly hour: number; readonly isSure: boolean };

const clockOf = ({ groups = {} }: RegExpExecArray): Clock => {
  if (groups.noon) return { hour: HALF_A_DAY, isSure: true };
  const said = (groups.hour ?? '').toLowerCase();
  const named = NAMED.indexOf(said);
  const hour = ((named < 0 ? Number(said) : named + 1) % HALF_A_DAY) + Number(groups.minute ?? 0) / 60;
  const half = groups.half?.toLowerCase() ?? (groups.day && (groups.day === 'morning' ? 'a' : 'p'));
  return { hour: hour + (half === 'p' ? HALF_A_DAY : 0), isSure: half !== undefined };
};

/** Hours from one to the other; where a half of the day is left open, the nearest time of that name before. */
const hoursBetween = (laid: Clock, now: Clock): number =>
  laid.isSure && now.isSure
    ? now.hour - laid.hour
    : (((now.hour - laid.hour) % HALF_A_DAY) + HALF_A_DAY) % HALF_A_DAY;

/** "Laid it at 2 pm, it's 5 pm now", "at seven, now it is noon": hours between two times of the same day. */
export const hoursByClock = (text: string): HeardFact[] => {
  const [laid, now] = [LAID.exec(text), NOW.exec(text)];
  if (!laid || !now || OTHER_DAY.test(text)) return [];
  const hours = hoursBetween(clockOf(laid), clockOf(now));
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
