import { entryOf } from '../../plain/entry-of.ts';
import { isLaying } from '../words/laying.ts';
import type { Manner } from '../words/manner.ts';
import { oneOf } from '../words/one-of.ts';
import type { SpokenSpan } from '../words/spoken-span.ts';
import { DOUBTED, FOLLOWS, JUST, OUTRIGHT, SAID } from '../words/sure.ts';
import { isTopNoun } from '../words/top-words.ts';
import type { Word } from '../words/words.ts';

const DAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];
const DAY = oneOf(
  ['mon', 'tues?', 'wednes', 'wed', 'thurs?', 'fri', 'satur', 'sun']
    .map((day) => `${day}s?|${day}days?`)
    .join('|'),
);
/** Short forms that are words of their own. */
const NO_DAY = oneOf('sun|suns|wed|weds|mon|fri');
const TODAY = /^(its|today|todays|tonight|now|this)$/;

/** "it's Saturday", "today is Saturday" */
const isToday = (words: readonly Word[], at: number): boolean =>
  TODAY.test(words[at - 1]?.word ?? '') ||
  (/^is$/.test(words[at - 1]?.word ?? '') && words[at - 2]?.word === 'it') ||
  (/^(is|and)$/.test(words[at - 1]?.word ?? '') && TODAY.test(words[at - 2]?.word ?? ''));
/** A day is told to half a day. */
const HALF_DAY = 14;
const WEEK = 168;

const dayOf = (words: readonly Word[], at: number): number => {
  const { word } = words[at] ?? { word: '' };
  const short = NO_DAY.test(word) && !/^(on|last|since|today|its)$/.test(words[at - 1]?.word ?? '');
  return DAY.test(word) && !short ? DAYS.indexOf(word.slice(0, 3)) : -1;
};

/** "sprayed on Tuesday, stacked on Wednesday": what is done to a coat that lies there. */
const OF_ELSE =
  /^(stacked|moved|hung|delivered|wrapped|packed|loaded|assembled|noticed|found|saw|checked|touched|pulled)$/;

/** "since Sunday", "since last Sunday" */
const isSince = (words: readonly Word[], at: number): boolean =>
  words.slice(Math.max(0, at - 2), at).some(({ word }) => word === 'since');

/** Whether a coat was laid on the day at `at`: its clause tells of laying, or names a coat before it. */
const isOfCoat = (words: readonly Word[], at: number): boolean =>
  !words.some(({ word, part }) => part === words[at]?.part && OF_ELSE.test(word)) &&
  words.some((word, index) => {
    if (word.clause !== words[at]?.clause) return false;
    // "curing since Monday"
    if (/^(drying|curing|sitting|been)$/.test(word.word) && isSince(words, at) && index < at) return true;
    // "the third went on on Sunday", "after sitting since Sunday"
    if (word.word === 'went' && words[index + 1]?.word === 'on' && index < at) return true;
    // "that was on Saturday"
    if (/^(that|it)$/.test(word.word) && words[index + 1]?.word === 'was' && index < at) return true;
    // "I did the treads on Monday"
    if (
      word.word === 'did' &&
      index < at &&
      /^(the|my|our|a|one|two|it|all)$/.test(words[index + 1]?.word ?? '')
    )
      return true;
    return isLaying(words, index) || (isTopNoun(word) && index < at && index > at - 6);
  });

type Day = { readonly at: number; readonly day: number };

const spanOfDay = (words: readonly Word[], { at }: Day): { from: number; to: number } => ({
  from: words[at]?.from ?? 0,
  to: words[at]?.to ?? 0,
});

const HOURS: Readonly<Record<string, number>> = {
  morning: 9,
  noon: 12,
  afternoon: 15,
  evening: 19,
  night: 22,
};

/** The hour of the part of the day that is named behind a day; not a number where none is. */
const hourOf = (words: readonly Word[], at: number): number =>
  entryOf(HOURS, words[at + 1]?.word ?? '') ?? Number.NaN;

/** Hours from the day of the last coat to the day of writing, or to the last day told of. */
export const weekdayTimes = (words: readonly Word[], manner: Manner): SpokenSpan[] => {
  const days = words.flatMap((_, at): Day[] => {
    const day = dayOf(words, at);
    if (day < 0) return [];
    const said = { sense: '', kind: '', of: [], from: at, to: at + 1, size: 1 };
    const before = words[at - 1]?.word ?? '';
    // "by Sunday there were spots", and not "I need it by Friday"
    const isBy = before === 'by' && !/^(there|it|was|were)$/.test(words[at + 1]?.word ?? '');
    return (manner.notYet(said) && !isToday(words, at)) ||
      isBy ||
      /^(until|till|next|this|every|my)$/.test(before)
      ? []
      : [{ at, day }];
  });
  const laid = days.findLast(({ at }) => isOfCoat(words, at) && !isToday(words, at));
  if (!laid) return [];
  const later = days.filter(({ at }) => at > laid.at);
  const today = later.find(({ at }) => isToday(words, at));
  const now = today ?? later.at(-1);
  const span = spanOfDay(words, laid);
  if (!now)
    return [{ ...span, least: 16, likely: WEEK / 2, most: 190, sure: DOUBTED, laid: true, now: true }];
  const apart = now.day === laid.day ? hourOf(words, now.at) - hourOf(words, laid.at) : 0;
  // "Monday morning … Monday night"
  if (apart > 0)
    return [{ ...span, least: apart / 2, likely: apart, most: apart + 5, sure: SAID, laid: true, now: true }];
  const hours = 24 * ((now.day - laid.day + 7) % 7 || 7);
  return [
    {
      ...span,
      least: hours - HALF_DAY,
      likely: hours,
      most: hours + (today ? HALF_DAY : WEEK),
      // "done on a Saturday, home a week later, on a Sunday"
      sure: today ? OUTRIGHT : words.some(({ word }) => /^(weeks?|months?)$/.test(word)) ? DOUBTED : SAID,
      laid: true,
      now: true,
    },
  ];
};

const SEASON =
  /^(spring|summer|fall|autumn|winter|christmas|thanksgiving|easter|january|february|march|april|may|june|july|august|september|october|november|december)$/;
const BEFORE_SEASON = oneOf('last|in|since|back|over|during');
/** A season that is named is over, or the day would have been told. */
const SEASON_AGO = { least: 336, likely: 2000, most: 9000 };

/** "last summer" is a month ago at least. */
const MONTH = 720;

/** The coat was laid in a season, a month or a year that is named. */
export const seasonTimes = (words: readonly Word[], manner: Manner): SpokenSpan[] => {
  const lays = () => words.some((_, at) => isLaying(words, at));
  return words.flatMap(({ word, to }, at): SpokenSpan[] => {
    const before = words[at - 1];
    if (!before || before.part !== words[at]?.part || !BEFORE_SEASON.test(before.word)) return [];
    const year = /^(?:19|20)\d\d$/.test(word) && /^(in|since)$/.test(before.word) && Number(word) <= LONG_AGO;
    if (!year && !SEASON.test(word)) return [];
    const said = { sense: '', kind: '', of: [], from: at, to: at + 1, size: 1 };
    if (manner.notYet(said)) return [];
    const done = words.some(
      (one, index) =>
        one.clause === words[at]?.clause &&
        (isLaying(words, index) ||
          /^(done|redone)$/.test(one.word) ||
          (year && before.word === 'since' && /^(had|owned)$/.test(one.word)) ||
          // "we put the kitchen in, in 2012": its finish is as old, if no other is told of
          (year && /^(installed|built|made|bought)$/.test(one.word) && !lays())),
    );
    if (!done) return [];
    const span = { from: before.from, to };
    return year
      ? [{ ...span, least: 8760, likely: 9000, most: 9000, sure: SAID, laid: done }]
      : [
          {
            ...span,
            ...SEASON_AGO,
            ...(before.word === 'last' && { least: MONTH }),
            sure: JUST,
            laid: done,
          },
        ];
  });
};

/** Years up to this one are more than a year past at any time of writing. */
const LONG_AGO = 2024;

const MONTHS = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
];
const FEASTS: Readonly<Record<string, number>> = { easter: 3, thanksgiving: 10, christmas: 11 };
const BEFORE_MONTH = oneOf('in|by|at|since|last|early|late|mid|of|around|before|after|now|its|is|until');
const HOURS_OF_MONTH = 730;
/** What is told of a coat that somebody else laid, or of the piece with it. */
const CAME = /^(delivered|installed|got|built|made|done|redone|finished|moved|put|had)$/;

const monthOf = (words: readonly Word[], at: number): number => {
  const { word = '', part } = words[at] ?? {};
  const before = words[at - 1];
  // "may" and "march" are months only behind such a word.
  if (before?.part !== part || !BEFORE_MONTH.test(before?.word ?? '')) return -1;
  return entryOf(FEASTS, word) ?? MONTHS.indexOf(word);
};

/** "finished it in November, it is March now": from the month of the coat to the last one that is told of. */
export const monthTimes = (words: readonly Word[]): SpokenSpan[] => {
  const told = words.flatMap((_, at) => (monthOf(words, at) >= 0 ? [at] : []));
  const [first, last] = [told[0], told.at(-1)];
  if (first === undefined || last === undefined || first === last) return [];
  const laid = words.some(
    (word, at) =>
      word.clause === words[first]?.clause &&
      (isLaying(words, at) ||
        CAME.test(word.word) ||
        // "that was in March"
        (word.word === 'that' && words[at + 1]?.word === 'was')),
  );
  const months = (monthOf(words, last) - monthOf(words, first) + 12) % 12;
  if (!laid || months === 0) return [];
  const hours = months * HOURS_OF_MONTH;
  const { from = 0, to = 0 } = words[first] ?? {};
  return [
    {
      from,
      to,
      least: hours - HOURS_OF_MONTH * 0.9,
      likely: hours,
      most: hours + HOURS_OF_MONTH * 0.9,
      sure: FOLLOWS,
      laid: true,
      now: true,
    },
  ];
};
