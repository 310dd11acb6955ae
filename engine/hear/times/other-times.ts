import { isLaying } from '../words/laying.ts';
import type { Match } from '../words/match.ts';
import { oneOf } from '../words/one-of.ts';
import { isTop, isTopNoun } from '../words/top-words.ts';
import type { Word } from '../words/words.ts';
import { OF_LAYERS } from './of-layers.ts';
import { OF_PEOPLE } from './of-people.ts';
import { OF_THINGS } from './of-things.ts';
import { has, hasKind, type ToldTime, toldTime } from './told-time.ts';

/** "the can says 4 hours"; but "two weeks of waiting, as they recommend" was done. */
const isOfLabel = ({ words, matches, to, isOfPart }: ToldTime): boolean => {
  const isDone =
    /^(waiting|drying|curing)$/.test(words[to + 1]?.word ?? '') &&
    words.some((word, at) => isOfPart(word) && at > to && word.word === 'as');
  // "as wet as when I laid it, says six hours": what stands before the comma is told.
  return (
    !isDone &&
    matches.some(
      (one) => one.sense === 'cue other-time' && isOfPart(words[one.from]) && isOfPart(words[one.to - 1]),
    )
  );
};

/** "Day 20 on the sewing cabinet", "week three of the kitchen": of the work; "day three of the coat" is told of it. */
const isDayOfWork = ({ words, from, after }: ToldTime): boolean =>
  /^(day|week|month)$/.test(words[from]?.word ?? '') &&
  /^(on|of|at|with)$/.test(after[0]?.word ?? '') &&
  hasKind(after.slice(1), 'furniture') &&
  !after.some(isTop);

/** "every 4 hours", "4 hours apart", "each coat sanded after 24 hours" */
const isOnEnd = ({ words, from, to, before, isOfPart }: ToldTime): boolean =>
  has(words.slice(Math.max(0, from - 2), to + 2).filter(isOfPart), /^(every|each|between|apart|per)$/) ||
  before.some(
    ({ word }, at) => /^(each|every)$/.test(word) && /^(coat|layer)$/.test(before[at + 1]?.word ?? ''),
  );

/** "three coats over two days" */
const isOverAll = ({ before }: ToldTime): boolean =>
  /^(over|within|across|in)$/.test(before.at(-1)?.word ?? '') && has(before, /^(coats?|coated|thing)$/);

/** "4 hours after the first" */
const isAfterFirst = ({ after }: ToldTime): boolean =>
  after[0]?.word === 'after' && has(after.slice(1, 4), /^(first|previous|stain|primer|staining|priming)$/);

/** "one thin coat and a thick one 45 minutes after": how long between the two. */
const isAfterFormer = ({ after, before, words, to, isOfPart }: ToldTime): boolean =>
  after[0]?.word === 'after' && !isOfPart(words[to + 1]) && has(before, /^(coats?|layers?|one)$/);

const NEXT_COAT = oneOf('second|third|fourth|another|next|last|recoated');

/** "recoated after half an hour", "put the second coat on within 30 minutes", "the wax on a month after the oil": how long after the one before it was laid. */
const isFromCoatToCoat = ({ words, from, before, after }: ToldTime): boolean => {
  const lays = before.findLastIndex((_, at) => isLaying(before, at));
  if (lays < 0 || has(before.slice(lays), /^(and|it|that|which|is|was)$/)) return false;
  const isBehind = [before.at(-1), words[from]].some((word) => /^(after|within)$/.test(word?.word ?? ''));
  const isNext = has(before, NEXT_COAT) && isBehind;
  const isAfterTop = after[0]?.word === 'after' && after.slice(1, 4).some(isTopNoun);
  return isNext || (isAfterTop && !has(after, /^(last|final)$/));
};

/** "24 hours till the next coat", "an hour between"; but "a week before we used it" was waited */
const isTillNext = ({ after }: ToldTime): boolean =>
  /^(till|until|before|between)$/.test(after[0]?.word ?? '') &&
  !has(after.slice(1, 4), /^(used|use|moved|loaded|touched|ate)$/);

/** "one coat a day" */
const isCoatsADay = ({ words, from, isOfPart }: ToldTime): boolean => {
  const last = words[from - 1];
  return (
    words[from]?.word === 'a' &&
    isOfPart(last) &&
    /^(one|two|three|once|twice|coats?|times|\d+)$/.test(last?.word ?? '')
  );
};

/** "after 12 hours I put on the second": somebody lays in what follows in the clause. */
const isTillLaid = ({ words, before, to }: ToldTime): boolean => {
  if (before.at(-1)?.word !== 'after') return false;
  const { clause } = words[to] ?? {};
  const who = words.findIndex(
    (word, at) => at >= to && at < to + 2 && /^(i|we|he|she|they)$/.test(word.word),
  );
  return (
    who >= 0 &&
    words.slice(who, who + 5).some((word, at) => word.clause === clause && isLaying(words, who + at))
  );
};

const MORNING = oneOf('morning|afternoon|evening|today|noon');
const EARLIER = oneOf('yesterday|night|ago');
const LOOKS = oneOf(
  'look|looks|looked|is|are|was|were|has|have|had|see|saw|found|find|noticed|notice|woke|there|feel|feels|felt',
);

/** "I put poly on yesterday and this morning it looks cloudy": when it was seen, and not when it was laid. */
const isOfTheLook = ({ words, before, after, from, to }: ToldTime): boolean =>
  MORNING.test(words[to - 1]?.word ?? '') &&
  words[from - 1]?.word === 'and' &&
  has(after.slice(0, 2), LOOKS) &&
  has(before, EARLIER) &&
  before.some((_, at) => isLaying(before, at));

const WIPED = /^(wiped|wiping|wipe|buffed|buffing|rubbed)$/;
/** "wiped off after fifteen minutes", "15 minutes wet before wiping", "twenty minutes, and when I wiped it off" */
const isTillWiped = ({ words, before, to }: ToldTime): boolean => {
  const last = words[to - 1];
  if (!/^(min|hour)/.test(last?.word ?? '')) return false;
  if (before.at(-1)?.word === 'after') return has(before, WIPED);
  const next = words.slice(to, to + 6).filter(({ sentence }) => sentence === last?.sentence);
  const wipes = next.findIndex(({ word }) => WIPED.test(word));
  return (
    wipes > 0 &&
    !/^(later|ago|since|after)$/.test(next[0]?.word ?? '') &&
    has(next.slice(0, wipes), /^(before|and|then|when|until|till)$/)
  );
};

/** "dried in 4 hours", and not "never dried in a week" */
const isTillDry = ({ before }: ToldTime): boolean =>
  before.at(-1)?.word === 'in' &&
  has(before.slice(-4), /^(dried|dry|dries|hard|sets?)$/) &&
  !has(before, /^(not|never|hasnt|havent|didnt|wont)$/);

/** "it got sticky in the last month", "over the past two weeks it has turned yellow": how lately, and not since when. */
const isOfLately = ({ words, before, from }: ToldTime): boolean => {
  const isLast = /^(last|past)$/.test(words[from]?.word ?? '');
  const back = isLast ? before : /^(last|past)$/.test(before.at(-1)?.word ?? '') ? before.slice(0, -1) : [];
  return back.at(-1)?.word === 'the' && /^(in|over|within|during)$/.test(back.at(-2)?.word ?? '');
};

/** "it rained for two days" */
const isOfWeather = ({ words, from, before }: ToldTime): boolean =>
  (words[from]?.word === 'for' || before.at(-1)?.word === 'for') &&
  has(before.slice(-4), /^(rain|rained|raining|snowed|snowing|stormed)$/);

/** "is that 24 hours or more like 12" */
const isAskedWhich = ({ words, from, before }: ToldTime): boolean =>
  words[from]?.asks === true &&
  /^(is|means|mean)$/.test(before.at(-2)?.word ?? '') &&
  /^(that|it|this)$/.test(before.at(-1)?.word ?? '');

/** "is 24 hours enough" */
const isAskedEnough = ({ after, isOfPart }: ToldTime): boolean =>
  after[0]?.word === 'enough' && isOfPart(after[0]);

/** "needs a week", "another two days"; but "let it cure a month" was waited for */
const isWanted = ({ before }: ToldTime): boolean =>
  !has(before, /^(let|left|gave)$/) &&
  /^(needs?|takes?|took|another|wait|give|cures?|requires?|lasts?|next)$/.test(before.at(-1)?.word ?? '');

/** "It was dry last week, and now it is tacky again": when it was so, and not when it was laid. */
const isOfHowItWas = ({ before, to, words, isOfPart }: ToldTime): boolean =>
  has(before.slice(-3), /^(dry|fine|hard|perfect|smooth|great)$/) &&
  has(before.slice(-4), /^(was|were|been|looked)$/) &&
  before.at(-1)?.word !== 'for' &&
  !/^(ago|later|after|since)$/.test((isOfPart(words[to]) && words[to]?.word) || '');

const OF_THE_WORK: readonly ((time: ToldTime) => boolean)[] = [
  isOfTheLook,
  isOfLabel,
  isDayOfWork,
  isOnEnd,
  isOverAll,
  isAfterFirst,
  isAfterFormer,
  isFromCoatToCoat,
  isTillNext,
  isCoatsADay,
  isTillLaid,
  isTillWiped,
  isTillDry,
  isAskedEnough,
  isAskedWhich,
  isOfLately,
  isOfWeather,
  isWanted,
  isOfHowItWas,
];

const REASONS = [...OF_THE_WORK, ...OF_THINGS, ...OF_PEOPLE, ...OF_LAYERS];

/** Whether a time is not that of the coat: one of the work or of the can, of a thing, of a person, of another layer. */
export const isElse = (
  words: readonly Word[],
  matches: readonly Match[],
  from: number,
  to: number,
): boolean => {
  const time = toldTime(words, matches, from, to);
  return REASONS.some((is) => is(time));
};
