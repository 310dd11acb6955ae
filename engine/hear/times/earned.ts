import { isStill } from '../coats/coat-story.ts';
import { isLaying, tellsOfLaying } from '../words/laying.ts';
import type { Manner } from '../words/manner.ts';
import type { Match } from '../words/match.ts';
import { oneOf } from '../words/one-of.ts';
import type { SpokenSpan } from '../words/spoken-span.ts';
import { HALF } from '../words/sure.ts';
import { isTop, isTopNoun } from '../words/top-words.ts';
import { isKind, type Word } from '../words/words.ts';
import type { Place } from './earned-place.ts';
import { OF_STEPS } from './earned-steps.ts';
import { isOfUse } from './time-words.ts';

const inClause = ({ words, at }: Place): readonly Word[] =>
  words.filter(({ clause }) => clause === words[at]?.clause);

/** "it looks as if someone poured acid on it": only compared. */
const isCompared = (words: readonly Word[], at: number): boolean =>
  words
    .slice(Math.max(0, at - 4), at)
    .some(
      ({ word, part }, index, near) =>
        part === words[at]?.part && word === 'as' && /^(if|though)$/.test(near[index + 1]?.word ?? ''),
    );

const laysInClause = ({ words, at }: Place): boolean =>
  words.some(
    (word, index) => word.clause === words[at]?.clause && isLaying(words, index) && !isCompared(words, index),
  );

/** Up to here a time is one of days. */
const DAYS = 200;
/** From here on a time is one of months. */
const MONTHS = 700;

/** "four weeks ago the varnish exploded", "a glass tipped just now": when something befell it. */
const isOfEvent = (place: Place): boolean => {
  const { words, at, to, time } = place;
  const said = words.slice(at, /^(ago|back)$/.test(words[to]?.word ?? '') ? to + 1 : to);
  if (!said.some((word) => isKind(word, 'from-now')) || words[at - 1]?.word === 'from') return false;
  if (/^(until|till|after)$/.test(words[at - 1]?.word ?? '')) return true;
  if (laysInClause(place)) return false;
  const own = words.filter((word) => word.part === words[at]?.part);
  const before = own.filter(({ from }) => from < (words[at]?.from ?? 0));
  const part = before.length > 1 ? before : own;
  if (time.least >= MONTHS && part.some((word) => isKind(word, 'gotten'))) return false;
  return (
    !/^(that|thats|it|its)$/.test(part[0]?.word ?? '') &&
    part.some(
      (word, index) =>
        (isKind(word, 'befalls') && !(word.word === 'went' && part[index + 1]?.word === 'on')) ||
        (/\w{3}ed$/.test(word.word) && !isKind(word, 'coat-does') && !isTop(word)),
    )
  );
};

/** "over the last three months 62 coats", "nothing has budged in two years" */
const isWithin = ({ words, at, to, time }: Place): boolean => {
  let back = at - 1;
  while (/^(the|last|past|about|just|some|long)$/.test(words[back]?.word ?? '')) back--;
  // "over the last two months I have laid twelve coats"
  const isOfMany =
    words[back]?.word === 'over' &&
    words.slice(to, to + 8).some(({ word, part }) => part === words[at]?.part && /^coats$/.test(word));
  return (isOfMany || !time.laid) && back < at - 1 && /^(over|during)$/.test(words[back]?.word ?? '');
};

/** "I tiptoed on the floors for months": what somebody did, and none of it was waiting or laying. */
const isOfSomebody = ({ words, at, to }: Place): boolean => {
  const part = words.slice(Math.max(0, at - 10), to).filter(({ part }) => part === words[at]?.part);
  const who = part.findIndex(({ word }) => /^(i|we)$/.test(word));
  const does = part[who + 1];
  return (
    who >= 0 &&
    part.slice(who).some(({ word }) => word === 'for') &&
    /\w{3}ed$/.test(does?.word ?? '') &&
    !isKind(does, 'waited', 'laying', 'laying-now', 'top-coated', 'coat-does')
  );
};

/** "used it on new boards for three months", "sanded it for hours" */
const isOfDoing = ({ words, at, to }: Place): boolean => {
  const before = words.slice(Math.max(0, at - 10), to).filter(({ part }) => part === words[at]?.part);
  const lasts = before.findLastIndex(({ word }) => word === 'for');
  if (before.some(isTopNoun) || /^(after|since)$/.test(words[to]?.word ?? '')) return false;
  return (
    lasts >= 0 &&
    before.slice(0, lasts).some((word) => isKind(word, 'kept-up')) &&
    !before.some(({ word }) => word === 'dry')
  );
};

const COMES = oneOf('is|are|leave|leaving|move|moving|arrive|arrives|come|comes|due');

/** "Years ago I was in a church that had just had its pews refinished": what was new then. */
const isNewThen = (place: Place): boolean =>
  place.time.now === true &&
  place.words.slice(place.at, place.to + 1).some(({ word }) => word === 'ago') &&
  inClause(place).some(
    ({ word }, at, clause) =>
      word === 'just' && /^(had|was|were|been)$/.test(clause[at - 1]?.word ?? clause[at + 1]?.word ?? ''),
  );

/** "I would scuff that in a few days", "the wedding is in five days" */
const isToCome = ({ words, at }: Place): boolean =>
  (words[at - 1]?.word === 'in' && COMES.test(words[at - 2]?.word ?? '')) ||
  (words
    .slice(Math.max(0, at - 12), at)
    .some(({ word, clause }) => clause === words[at]?.clause && /^(would|will|could|ill|can)$/.test(word)) &&
    words[words[at - 1]?.word === 'a' ? at - 2 : at - 1]?.word === 'in');

/** "night before I leave", "before bed I wanted a coat" */
const isBeforeElse = ({ words, at, to }: Place): boolean =>
  words.slice(at, to).some(({ word }) => word === 'before') &&
  /^(i|we)$/.test(words[to]?.word ?? '') &&
  !isLaying(words, to + 1);

/** "my 4-year-old table": of the thing, whose coat is not told of. */
const isOfThing = (place: Place): boolean => {
  const { words, at, to } = place;
  return (
    words[to]?.word === 'old' &&
    !laysInClause(place) &&
    !inClause(place).some(isTopNoun) &&
    !/^(its|thats|is)$/.test(words[at - 1]?.word ?? '')
  );
};

/** "It has had no finish for five years", "we have been a week without a handrail" */
const isWithoutCoat = ({ words, at, to }: Place): boolean => {
  if (words[to]?.word === 'without' && /^(a|an|the|our|my)$/.test(words[to + 1]?.word ?? '')) return true;
  const part = words.filter((word) => word.part === words[at]?.part);
  return part.some(({ word }, index) => /^(no|without)$/.test(word) && isTopNoun(part[index + 1]));
};

/** "Went to bed", "three days of cure before": neither tied to the coat nor to now, and no word of a film beside it. */
const isLoose = (place: Place): boolean => {
  const { words, matches, at, to, time } = place;
  if (time.now || time.laid || time.near || isStill(words, time.from, time.to)) return false;
  if (/^(in|on)$/.test(words[to]?.word ?? '')) return false;
  const { sentence, part } = words[at] ?? {};
  if (words.some((word) => word.part === part && isKind(word, 'waited'))) return false;
  if (words.some((word) => word.sentence === sentence && isTop(word))) return false;
  // "a wet towel lay there. Two weeks on the mark is black": where no coat is told of, what befell the piece has the time.
  const isOfUseAlone = time.least < DAYS && isOfUse(matches) && !tellsOfLaying(words, matches);
  return !matches.some(
    ({ kind, of, from }) =>
      ((kind === 'sign' && !isOfUseAlone) ||
        (kind === 'fact' && (of[0] === 'stage' || of[0] === 'overdue'))) &&
      words[from]?.sentence === sentence,
  );
};

/** Each is named by its example; any one of them is enough. */
const REASONS: readonly ((place: Place) => boolean)[] = [
  isLoose,
  ...OF_STEPS,
  isOfEvent,
  isWithin,
  isOfDoing,
  isOfSomebody,
  isBeforeElse,
  isOfThing,
  isToCome,
  isWithoutCoat,
  isNewThen,
];

/** The first word that begins at the letter `letter` or behind it. */
const firstFrom = (words: readonly Word[], letter: number): number => {
  let [low, high] = [0, words.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((words[middle]?.from ?? 0) < letter) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** A time that is not said to be that of the coat, and of now, is doubted. */
export const earned = (
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
  time: SpokenSpan,
): SpokenSpan => {
  const at = firstFrom(words, time.from);
  const to = firstFrom(words, time.to);
  const place = { words, matches, manner, at, to, time };
  const doubted = REASONS.some((is) => is(place));
  return doubted ? { ...time, sure: Math.min(time.sure, HALF) } : time;
};
