import { isStill } from '../coats/coat-story.ts';
import { isLaying } from '../words/laying.ts';
import { oneOf } from '../words/one-of.ts';
import { isTop, isTopNoun } from '../words/top-words.ts';
import { isKind } from '../words/words.ts';
import type { Place } from './earned-place.ts';
import { COAT, isTold, laidIn } from './laid-since.ts';

const GOES_ON = oneOf('and|then|i|we|he|she|they|to');

const FORMER = oneOf('first|previous');
const LATTER = oneOf('second|third|next');
const ONE_COAT = oneOf('coat|layer|one');
const IS_COAT = oneOf('coat|layer|one|is|was|has|went|got|looks|feels');

/** "The first coat dried for a week. The second is tacky": the time of the one that lies below. */
const isOfFormerCoat = ({ words, at, to }: Place): boolean =>
  words.some(
    ({ word, clause }, index) =>
      clause === words[at]?.clause && FORMER.test(word) && ONE_COAT.test(words[index + 1]?.word ?? ''),
  ) &&
  words.some(
    ({ word }, index) =>
      index >= to &&
      LATTER.test(word) &&
      (IS_COAT.test(words[index + 1]?.word ?? '') || words[index + 1]?.part !== words[index]?.part),
  );

/** "stained it two days ago and put the varnish on today" */
const isLaidToday = ({ words, manner, to, at: first }: Place): boolean =>
  laidIn(words, manner).some(
    (at) =>
      at >= to &&
      words[at]?.sentence === words[first]?.sentence &&
      words
        .slice(at, at + 7)
        .some(({ word, part }) => part === words[at]?.part && /^(today|now)$/.test(word)),
  );

const NEXT = oneOf('then|later');
const NEXT_COAT = oneOf('coats?|layers?|second|third|fourth|fifth|goes|one');
const OPENS = oneOf('the|a|an|my|our|another|one|two|three|second|third|fourth|last|final|next');
const IS_SO = oneOf('is|was|are|were|has|had|have|still|looks|looked|feels|felt|got|turned|dries|dried|came');

/** "24 hours later the last coat in satin", "one coat, a day, then the second": right behind it comes the next coat. */
const isNextRightBehind = ({ words, manner, at, to }: Place): boolean => {
  const [here, first] = [words[to], words[to + 1]];
  if (!NEXT.test(here?.word ?? '') || here?.sentence !== words[at]?.sentence) return false;
  const behind = words.slice(to + 1, to + 10).filter(({ part }) => part === here?.part);
  const next = behind.slice(0, 4);
  const coat = next.findIndex(({ word }) => NEXT_COAT.test(word));
  const isNamed = here?.word === 'then' && next.slice(0, 3).some(isTopNoun);
  // "later the second coat was tacky" tells how it is, "later I saw the second coat" what was seen
  if (behind.some(({ word }) => IS_SO.test(word))) return false;
  return (isNamed || (coat >= 0 && OPENS.test(first?.word ?? ''))) && isTold(words, manner, to + 1);
};

/** "a day later I began the second coat", "two hours later slapped on another": told after it, a coat was laid. */
const isLaidSince = ({ words, manner, at: first, to, time }: Place): boolean => {
  if (time.now && words[to]?.word !== 'after') return false;
  if (isStill(words, time.from, time.to)) return false;
  const own = words[first]?.clause;
  // "the day after I sprayed it"
  const isAfter = words.slice(to - 1, to + 4).some(({ word }) => /^(after|since)$/.test(word));
  return laidIn(words, manner).some((at) => {
    if (at < to) return false;
    if (words[at]?.clause !== own) return true;
    return !isAfter && (GOES_ON.test(words[at - 1]?.word ?? '') || COAT.test(words[at]?.word ?? ''));
  });
};

/** "24 hours, rubbed with wool, waxed": a step of the work, and now is later. */
const isWorkedSince = ({ words, manner, at: first, to, time }: Place): boolean => {
  const isFromNow =
    time.now && words.slice(Math.max(0, first - 3), to + 1).some((word) => isKind(word, 'from-now'));
  if (isFromNow || isStill(words, time.from, time.to)) return false;
  const { sentence } = words[first] ?? {};
  // "let it haze 20 minutes and buffed it"
  const isLeft = words
    .slice(Math.max(0, first - 5), first)
    .some(({ word }) => /^(let|left|gave)$/.test(word));
  return words.some(
    (word, at) =>
      at >= to &&
      word.sentence === sentence &&
      (word.comma || (isLeft && words[at - 1]?.word === 'and')) &&
      isKind(word, 'worked-dry') &&
      isTold(words, manner, at),
  );
};

/** Sentences that are looked back over for what was done before a time. */
const LOOKS_BACK = 1;
/** What is said to be longer than this was no sanding. */
const WORKING_DAY = 12;

/** "sanded it by hand. After an hour and a half most was off": what was done last before the time took it, and no coat dried in it. */
const isOfWorkBefore = ({ words, manner, at, to, time }: Place): boolean => {
  if (time.now || time.laid || time.least > WORKING_DAY || isStill(words, time.from, time.to)) return false;
  if (/^(since|ago)$/.test(words[to]?.word ?? '')) return false;
  const sentence = (words[at]?.sentence ?? 0) - LOOKS_BACK;
  for (let back = at - 1; back >= 0 && (words[back]?.sentence ?? 0) >= sentence; back--) {
    const word = words[back];
    if (isTop(word) || COAT.test(word?.word ?? '') || isLaying(words, back)) return false;
    if (isKind(word, 'worked-dry') && !isKind(word, 'laying') && isTold(words, manner, back)) return true;
  }
  return false;
};

/** Each is named by its example: the time is one between two steps of the work, and now is later. */
export const OF_STEPS: readonly ((place: Place) => boolean)[] = [
  isLaidSince,
  isLaidToday,
  isOfFormerCoat,
  isNextRightBehind,
  isWorkedSince,
  isOfWorkBefore,
];
