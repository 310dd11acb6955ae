import type { HeardFact } from '../words/heard.ts';
import { PLAINLY } from '../words/sure.ts';
import type { Span } from '../words/words.ts';

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
const MINUTES: Readonly<Record<string, number>> = {
  five: 5,
  ten: 10,
  fifteen: 15,
  twenty: 20,
  quarter: 15,
  thirty: 30,
  half: 30,
  'forty five': 45,
};
const HOUR = String.raw`(?:\d{1,2}|${NAMED.join('|')})`;
/** What is done at about the same hour every day. */
const MEALS: Readonly<Record<string, number>> = {
  breakfast: 8,
  lunch: 12.5,
  lunchtime: 12.5,
  teatime: 16.5,
  work: 17.5,
  dinner: 18.5,
  dinnertime: 18.5,
  supper: 18.5,
  suppertime: 18.5,
  bedtime: 22,
  'bed time': 22,
};
/** What stands right before an hour that is told by its number alone, and what may stand behind it. */
const BARE_BEFORE = String.raw`(?:at|around|about|by|since|now|it['’]?s|is|says|like|say|till|until|near|roughly)\s+(?:about\s+|around\s+|like\s+|almost\s+|nearly\s+)?`;
const BARE_AFTER = String.raw`(?=\s*(?:[.,;!?)–—]|:(?!\d)|$|(?:and|now|this|that|in the|it|i|last|yesterday|tonight|today|again|here|so|but|when|with|my|the|or|after|before)\b))`;
const dayPart = (name: string) =>
  String.raw`(?:,?\s*(?:(?:in the|this|that|last|yesterday|the next|next)\s+)?(?<${name}>(?:morning|afternoon|evening|night|nite|a\.?m|p\.?m)\b))`;
/** An hour of the clock: "9am", "2:15", "half past 11", "ten to nine", "at seven", "noon". */
const CLOCK = new RegExp(
  String.raw`\b(?:(?<noon>noon|midday|midnight)\b` +
    String.raw`|(?:at|since|after|before|around|about|now|it['’]?s)\s+(?<meal>breakfast|lunch(?:time)?|dinner(?:time)?|supper(?:time)?|bed\s?time|teatime|work)\b` +
    String.raw`|(?<past>quarter|half|five|ten|twenty|\d{1,2})(?:\s+(?:minutes|mins|min))?\s+(?<way>to|till|before|past|after)\s+(?<pastHour>${HOUR})\b(?!\s*(?:hours?|hrs?|min|days?|weeks?|months?|years?|coats?|times|percent|degrees|%|[:.]\d))${dayPart('pastPart')}?` +
    String.raw`|(?<hour>\d{1,2}):(?<minute>\d{2})(?!\d)${dayPart('minutePart')}?` +
    String.raw`|(?<dayHour>${HOUR})(?:\s*o['’]?\s?clock)${dayPart('dayPart')}?` +
    String.raw`|(?<partHour>${HOUR})\s*${dayPart('ownPart')}` +
    String.raw`|${BARE_BEFORE}(?<bareHour>${HOUR})(?:${dayPart('barePart')}|\s+(?<bareMinute>fifteen|thirty|forty[\s-]five)\b|${BARE_AFTER}))`,
  'gi',
);
/** Words of laying or of being done with it, in the sentence of the first time. */
const LAID =
  /\b(?:laid|put|brushed|rolled|sprayed|shot|applied|coated|wiped|did|finished|quit|stopped|went on|topped|top coat|topcoat|coat|clear|hit it|drying|padded|poured|oiled|waxed|buffed)\b/i;
/** "the second at six" */
const NTH = /\b(?:second|third|fourth|fifth|next|last)\s+(?:one\s+|coat\s+)?(?:at|around|about|by)\s*$/i;
const LAYS =
  /\b(?:laid|brushed|rolled|sprayed|shot|applied|padded|poured|put (?:it|them|on|the|a|another))\b/i;
/** Told of other days than last night, hours of the clock are no span. */
const OTHER_DAY =
  /\b(?:ago|days|weeks?|months?|years?|monday|tuesday|wednesday|thursday|friday|saturday|sunday|hours? later)\b/i;
const OVER_NIGHT =
  /\b(?:last (?:night|nite|evening)|over\s?(?:night|nite)|yesterday|next (?:morning|day)|got up|woke|this (?:morning|a\.?m))\b/i;
/** Nobody looks at the clock to the minute. */
const EITHER_WAY = 0.4;
const EITHER_WAY_OF_MEALS = 1.5;
const HALF_A_DAY = 12;
const A_DAY = 24;

/** An hour that is told, from midnight on, or from either midnight or noon where nothing tells which. */
type Clock = Span & {
  readonly hour: number;
  readonly half: 'a' | 'p' | undefined;
  readonly isLoose?: boolean;
};

const hourOf = (said: string): number => {
  const named = NAMED.indexOf(said.toLowerCase());
  return (named < 0 ? Number(said) : named + 1) % HALF_A_DAY;
};

/** "at ten last night" is of the evening, "at two last night" as well as "in the night" is not. */
const halfOf = (part: string | undefined, hour: number): 'a' | 'p' | undefined => {
  const said = part?.toLowerCase() ?? '';
  if (/^(?:morning|a\.?m)/.test(said)) return 'a';
  if (/^n/.test(said)) return hour >= 4 ? 'p' : 'a';
  return said ? 'p' : undefined;
};

const clocksIn = (text: string): Clock[] =>
  [...text.matchAll(CLOCK)].flatMap((found): Clock[] => {
    const { groups = {} } = found;
    const first = (...names: string[]) => names.map((name) => groups[name]).find(Boolean);
    const span = { from: found.index, to: found.index + found[0].length };
    const noon = groups['noon']?.toLowerCase();
    if (noon) return [{ ...span, hour: 0, half: noon === 'midnight' ? 'a' : 'p' }];
    const meal = MEALS[groups['meal']?.toLowerCase() ?? ''];
    if (meal)
      return [{ ...span, hour: meal % HALF_A_DAY, half: meal < HALF_A_DAY ? 'a' : 'p', isLoose: true }];
    const said = first('pastHour', 'hour', 'dayHour', 'partHour', 'bareHour') ?? '';
    if (Number(said) > HALF_A_DAY) return [];
    const hour = hourOf(said);
    const past = groups['past']?.toLowerCase();
    const beside = past ? (MINUTES[past] ?? Number(past)) : 0;
    const isTo = /^(?:to|till|before)$/i.test(groups['way'] ?? '');
    const named = MINUTES[groups['bareMinute']?.toLowerCase().replace('-', ' ') ?? ''] ?? 0;
    const minutes = Number(groups['minute'] ?? named) + (isTo ? -beside : beside);
    return [
      {
        ...span,
        hour: hour + minutes / 60,
        half: halfOf(first('pastPart', 'minutePart', 'dayPart', 'ownPart', 'barePart'), hour),
      },
    ];
  });

/** Hours from one to the other; where a half of the day is left open, the nearest time of that name after. */
const hoursBetween = (laid: Clock, now: Clock, overNight: boolean): number => {
  // What was laid last night and is looked at in the morning: evening and morning, though neither is said.
  const from = laid.half ?? (overNight && now.half === 'a' ? 'p' : undefined);
  const to = now.half ?? (overNight && from === 'p' ? 'a' : undefined);
  const apart = now.hour - laid.hour;
  if (from && to) return (apart + (from === to ? 0 : HALF_A_DAY) + A_DAY) % A_DAY || A_DAY;
  return ((apart % HALF_A_DAY) + HALF_A_DAY) % HALF_A_DAY || HALF_A_DAY;
};

/** Told of yesterday, both halves of the day must be known. */
const hoursSinceYesterday = (laid: Clock, now: Clock): number | undefined => {
  if (!laid.half || !now.half) return undefined;
  const of = ({ hour, half }: Clock) => hour + (half === 'p' ? HALF_A_DAY : 0);
  return A_DAY + of(now) - of(laid);
};

/** What stands around a time up to the stops, before it and behind it. */
const around = (text: string, { from, to }: Span, stops: RegExp): string => {
  const before = [...text.slice(0, from).matchAll(stops)].at(-1);
  const behind = text.slice(to).search(stops);
  return text.slice(before ? before.index + before[0].length : 0, behind < 0 ? undefined : to + behind);
};
const SENTENCE = /[.!?\n](?=\s)/g;
const PART = /[.!?\n;](?=\s)|,|\b(?:then|and)\b/g;
const NOW_BEFORE = /\b(?:now|it['’]?s|it is)[^.;!?]{0,9}$/i;
const NOW_BEHIND = /^[^.;!?]{0,3}\bnow\b/i;

/** "did not finish until half past nine": an hour at which the work was done, and not that of now. */
const DONE_BEFORE = /\b(?:finish|finished|finishing|done|quit|stopped)\b[^.;,!?]{0,18}$/i;

/** "Laid it at 2 pm, it's 5 pm now", "at seven, now it is noon", "at ten last night … it's noon": hours between two times. */
export const hoursByClock = (text: string): HeardFact[] => {
  if (OTHER_DAY.test(text)) return [];
  const clocks = clocksIn(text);
  if (clocks.length < 2) return [];
  const isNow = ({ from, to }: Span) =>
    NOW_BEFORE.test(text.slice(0, from)) ||
    NOW_BEFORE.test(text.slice(0, from + 4)) ||
    NOW_BEHIND.test(text.slice(to));
  const last = clocks.at(-1);
  // "opened the can at two and brushed it on at four": nothing tells what hour it is now.
  const isDone =
    last !== undefined && (DONE_BEFORE.test(text.slice(0, last.from)) || LAYS.test(around(text, last, PART)));
  const now = clocks.findLast(isNow) ?? (isDone ? undefined : last);
  const others = clocks.filter((one) => one !== now);
  const tells = (stops: RegExp) => (clock: Clock) =>
    LAID.test(around(text, clock, stops)) || NTH.test(text.slice(0, clock.from + 3));
  const laid = others.findLast(tells(PART)) ?? others.findLast(tells(SENTENCE));
  if (!laid || !now) return [];
  const hours = /\byesterday\b/i.test(around(text, laid, PART))
    ? hoursSinceYesterday(laid, now)
    : hoursBetween(laid, now, OVER_NIGHT.test(text));
  if (hours === undefined) return [];
  const way = laid.isLoose || now.isLoose ? EITHER_WAY_OF_MEALS : EITHER_WAY;
  return [
    {
      fact: 'hours-since-coat',
      value: hours,
      range: [Math.max(0, hours - way), hours + way],
      sure: PLAINLY,
      rests: [laid, now].map(({ from, to }) => ({ from, to })),
      against: [],
    },
  ];
};
