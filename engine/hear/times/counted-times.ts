import { ordinalSpan, spanAt } from '../words/spans.ts';
import type { SpokenSpan } from '../words/spoken-span.ts';
import { spreadOf } from '../words/spread.ts';
import { stretch } from '../words/stretch.ts';
import { HALF, JUST, OF_THE_LAST, OUTRIGHT, SAID } from '../words/sure.ts';
import type { Telling } from '../words/telling.ts';
import type { Word } from '../words/words.ts';
import { HEDGE, isElapsed } from './elapsed.ts';
import { isOfAnotherStory } from './other-story.ts';
import { isElse } from './other-times.ts';
import {
  isAfterTop,
  isAlone,
  isDoubted,
  isDrying,
  isOfDrying,
  isOfFilm,
  isOfFlaw,
  isOfLaying,
  isOfUse,
  laysBeside,
  MONTH,
  namesFilm,
} from './time-words.ts';

/** A time in numbers, words `at` to before `to`, with what stands around it. */
type Counted = {
  readonly words: readonly Word[];
  readonly at: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  readonly here: Word;
  /** The last word before it that hedges nothing. */
  readonly back: number;
  /** The word behind it, in its sentence. */
  readonly after: Word | undefined;
  /** "three weeks old" */
  readonly old: boolean;
  /** "two weeks ago" */
  readonly ago: boolean;
  /** Of a month and more. */
  readonly long: boolean;
  readonly alone: boolean;
  /** Told as gone by: "it has been two days". */
  readonly elapsed: boolean;
};

/** Words before a time that only hedge it. */
const HEDGES = 3;

const backOf = (words: readonly Word[], at: number): number => {
  let back = at - 1;
  while (back >= at - HEDGES && HEDGE.test(words[back]?.word ?? '') && words[back]?.part === words[at]?.part)
    back--;
  return back;
};

const countedAt = ({ ear, words }: Telling, at: number): Counted | undefined => {
  const nth = ordinalSpan(ear, words, at);
  const span = nth ?? spanAt(ear, words, at);
  const here = words[at];
  if (!span || !here) return undefined;
  const { to, low, high } = span;
  const after = words[to]?.sentence === here.sentence ? words[to] : undefined;
  const back = backOf(words, at);
  return {
    words,
    at,
    to,
    low,
    high,
    here,
    back,
    after,
    old: after?.word === 'old',
    ago: after?.word === 'ago' || after?.word === 'back',
    long: low >= MONTH,
    alone: isAlone(words, at, to),
    elapsed: nth !== undefined || isElapsed(words, at, to, back),
  };
};

const LATER = /^(ago|later|since|on|now|back|in|still|after)$/;
/** "two days later" */
const isLater = ({ here, after }: Counted): boolean =>
  after !== undefined && LATER.test(after.word) && after.clause === here.clause;

const SPAN_WORD = /^(after|for|past|last|still|within|over|just|only|been|waited|waiting)$/;
/** "for two days", "after almost a week" */
const isAfterSpanWord = ({ words, at, back, here }: Counted): boolean =>
  SPAN_WORD.test(words[at - 1]?.word ?? '') ||
  (SPAN_WORD.test(words[back]?.word ?? '') && words[back]?.part === here.part);

/** "2 hours so far" */
const isSoFar = ({ words, to }: Counted): boolean =>
  words[to]?.word === 'so' && words[to + 1]?.word === 'far';

/** "now, at 22 hours" */
const isAtNow = ({ words, at }: Counted): boolean =>
  words[at - 1]?.word === 'at' && words[at - 2]?.word === 'now';

/** "then two weeks of waiting" */
const isOfWaiting = ({ words, to }: Counted): boolean =>
  words[to]?.word === 'of' && /^(waiting|drying|curing)$/.test(words[to + 1]?.word ?? '');

/** "Not even two months and the finish lifts." */
const isBeforeAnd = ({ words, back, here, after }: Counted): boolean =>
  after?.word === 'and' && words[back]?.sentence !== here.sentence;

/** "six months old" */
const isAge = ({ old, long }: Counted): boolean => old && long;

/** "Oak cabinets, 25 years." */
const endsClause = ({ long, after, here }: Counted): boolean =>
  long && (after === undefined || after.clause !== here.clause);

/** Each is named by its example; by any one of them it is said that so much time went by. */
const SAYS_SO: readonly ((time: Counted) => boolean)[] = [
  ({ elapsed }) => elapsed,
  ({ alone }) => alone,
  isLater,
  isAfterSpanWord,
  isSoFar,
  isAtNow,
  isOfWaiting,
  isBeforeAnd,
  isAge,
  endsClause,
];

const any = (words: readonly Word[], from: number, to: number, set: ReadonlySet<string>): boolean =>
  words.slice(Math.max(0, from), to).some((word) => set.has(word.word));

/** "brushed it on, 5 hours": a word of laying, or of time gone by, stands near. */
const isNearLaying = ({ words, at, to }: Counted, { ear }: Telling): boolean =>
  any(words, at - 4, to + 4, ear.laid) || any(words, at - 3, to + 2, ear.ago);

/** "a two day old board": of a thing, where no film is named. */
const isOfNewThing = ({ words, at, old, long, elapsed }: Counted): boolean =>
  old && !long && !elapsed && !namesFilm(words, at);

/** Whether a time that is told is that of no coat: one of a thing, planned, of the can, or of another story. */
const isOfNoCoat = (time: Counted, { words, matches, manner }: Telling): boolean =>
  isOfNewThing(time) ||
  manner.notYet(stretch(time.at, time.to)) ||
  isElse(words, matches, time.at, time.to) ||
  (time.ago && time.long && isOfAnotherStory(words, time.to + 1));

/** "two weeks since the last coat", and not "waited two weeks after the last coat, and ten weeks on it is soft" */
const isOfTheLast = ({ words, at, to, after }: Counted): boolean =>
  !/^wait(ed|ing)?$/.test(words[at - 1]?.word ?? '') &&
  /^(since|after)$/.test(after?.word ?? '') &&
  (words.slice(to + 1, to + 4).some(({ word }) => /^(last|final|coat|second|third)$/.test(word)) ||
    isAfterTop(words, to));

/** "we bought the table ten years ago and brushed poly on it": the coat is not so old. */
const isOfPiece = ({ words, at, to, long, elapsed, old, ago }: Counted, telling: Telling): boolean =>
  long && (old || !elapsed) && isDoubted(words, telling.matches, at, to, { old, ago }, telling.manner);

/** "three days ago it was hot": where nothing is told of laying a coat, and nothing of a film or its flaw beside it. */
const isOfAnything = (time: Counted, { matches, lays }: Telling): boolean => {
  const { words, at, after, old, ago, long, elapsed } = time;
  return (
    !(long || lays || elapsed || old || after?.word === 'now') &&
    !isOfFilm(words, matches, at) &&
    !isOfDrying(words, at) &&
    !(after?.word === 'later' && isOfFlaw(words, matches, at)) &&
    !(ago && namesFilm(words, at) && !isOfUse(matches))
  );
};

/** "you hardly ever get a day under 65 %": one that is not counted, and that nothing says to have gone by. */
const isOfNoOne = ({ words, at }: Counted): boolean =>
  /^an?$/.test(words[at]?.word ?? '') && !isOfLaying(words, at) && !isOfDrying(words, at);

type Told = Counted & { readonly saysSo: boolean; readonly ofLast: boolean };

/** How sure a time is; the first that fits counts. */
const SURE_BY: readonly (readonly [is: (time: Told, telling: Telling) => boolean, sure: number])[] = [
  [({ ofLast }) => ofLast, OF_THE_LAST],
  [isOfPiece, HALF],
  [isOfAnything, HALF],
  [({ ago }) => ago, OUTRIGHT],
  [({ saysSo }) => saysSo, SAID],
  [isOfNoOne, HALF],
];

const sureOf = (time: Told, telling: Telling): number =>
  SURE_BY.find(([is]) => is(time, telling))?.[1] ?? JUST;

/** "9 days on" */
const isDaysOn = ({ words, to, here }: Counted): boolean =>
  words[to]?.word === 'on' && words[to]?.part === here.part && words[to + 1]?.part !== here.part;

const spokenOf = (time: Told, telling: Telling): SpokenSpan => {
  const { words, at, to, low, high, here, back, after, ago } = time;
  // From the coat on until now, by itself.
  const isBoth = time.ofLast || time.alone || isSoFar(time) || isAtNow(time);
  return {
    from: here.from,
    to: (ago ? after : words[to - 1])?.to ?? here.to,
    ...spreadOf(low, high),
    sure: sureOf(time, telling),
    laid: isBoth || isOfLaying(words, at) || isDrying(words, at),
    near: laysBeside(words, at),
    now: isBoth || ago || isDaysOn(time) || after?.word === 'now' || words[back]?.word === 'been',
  };
};

/** Times told in numbers: "two days ago", "day three", "after a week and a half". */
export const countedTimes = (telling: Telling): SpokenSpan[] => {
  const found: SpokenSpan[] = [];
  for (let at = 0; at < telling.words.length; at++) {
    const time = countedAt(telling, at);
    if (!time) continue;
    const saysSo = SAYS_SO.some((is) => is(time));
    if (!(saysSo || isNearLaying(time, telling)) || isOfNoCoat(time, telling)) continue;
    found.push(spokenOf({ ...time, saysSo, ofLast: isOfTheLast(time) }, telling));
    at = time.to - 1;
  }
  return found;
};
