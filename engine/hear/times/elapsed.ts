import { isLaying } from '../words/laying.ts';
import { oneOf } from '../words/one-of.ts';
import { isTop } from '../words/top-words.ts';
import type { Word } from '../words/words.ts';

/** Words before a time that hedge it: "almost two weeks". */
export const HEDGE =
  /^(almost|nearly|about|around|roughly|maybe|at|least|good|full|whole|well|over|just|the|like|close|to|even|not|only|barely|some|say|more|than|easily|probably|pretty|much|exactly|now|already|a|all|of|some|nigh)$/;

/** A time in numbers, words `at` to before `to`, and the first word before it that hedges nothing. */
type Said = {
  readonly words: readonly Word[];
  readonly at: number;
  readonly to: number;
  readonly back: number;
};

const wordAt = ({ words, at }: Said, index: number): string =>
  words[index]?.sentence === words[at]?.sentence ? (words[index]?.word ?? '') : '';

const sameSentence = ({ words, at }: Said, from: number, to: number): readonly Word[] =>
  words.slice(Math.max(0, from), to).filter(({ sentence }) => sentence === words[at]?.sentence);

/** "45 minutes in and I see a run", "One week in." */
const isIn = (said: Said): boolean =>
  wordAt(said, said.to) === 'in' &&
  /^(|and|with|now|when|it|its|i|im|but|still|there|theres|the|so|already)$/.test(
    said.words[said.to + 1]?.part === said.words[said.at]?.part ? wordAt(said, said.to + 1) : '',
  );

/** "Been 5 days", "it has been about an hour"; "I have been sanding for two days" tells of no coat. */
const hasBeen = (said: Said): boolean =>
  wordAt(said, said.back) === 'been' &&
  !/^(ive|weve|i|we|hes|shes|have)$/.test(wordAt(said, said.back - 1)) &&
  !/^(i|we|he|she|they)$/.test(wordAt(said, said.back - 2));

/** "an hour and a half has gone by", "three days have passed", "two days went by" */
const hasGoneBy = (said: Said): boolean =>
  sameSentence(said, said.to, said.to + 4).some(({ word }) => /^(passed|elapsed)$/.test(word)) ||
  (/^(has|have|had|went|gone)$/.test(wordAt(said, said.to)) &&
    sameSentence(said, said.to, said.to + 3).some(({ word }) => word === 'by'));

/** "2 hours since the last coat", "six days since I sprayed", "twelve hours after brushing" */
const isSinceLaying = (said: Said): boolean =>
  /^(since|after|from|past)$/.test(wordAt(said, said.to)) &&
  said.words
    .slice(said.to + 1, said.to + 7)
    .some(
      (word, index) =>
        word.part === said.words[said.to]?.part &&
        (isTop(word) ||
          /^(brushing|rolling|spraying|wiping|padding|coating|finishing|applying|laying|oiling|waxing|varnishing)$/.test(
            word.word,
          ) ||
          isLaying(said.words, said.to + 1 + index)),
    );

/** "a coat that is nine days old", "that one is about an hour old" */
const isAgeOfCoat = (said: Said): boolean =>
  wordAt(said, said.to) === 'old' &&
  (sameSentence(said, 0, said.words.length).some(({ word }) =>
    /^(coats?|poly|varnish|lacquer|shellac|topcoat|clear)$/.test(word),
  ) ||
    /^(its|thats|is)$/.test(wordAt(said, said.back)));

const LAY_STILL = oneOf('drying|curing|cured|dried|sat|sitting|set|rested|resting|hanging|hung|aged');

/** "has been on 2 hrs", "the clear has had two hours", "on a finish that had three days" */
const hasHad = (said: Said): boolean => {
  const before = wordAt(said, said.back);
  const earlier = wordAt(said, said.back - 1);
  return (
    (before === 'on' && /^(been|is|its|sat|was)$/.test(earlier)) ||
    (before === 'had' && /^(has|its|that|clear|coat|now|have|one|it|ones)$/.test(earlier)) ||
    (before === 'got' && /^(its|has)$/.test(earlier)) ||
    (LAY_STILL.test(before) && /^(been|its|has|is|it)$/.test(earlier)) ||
    (before === 'for' &&
      LAY_STILL.test(earlier) &&
      /^(been|its|has|had|have|it|they)$/.test(wordAt(said, said.back - 2))) ||
    // "let them rest about three weeks"
    (/^(rest|sit|cure|hang|harden|age)$/.test(before === 'for' ? earlier : before) &&
      sameSentence(said, said.back - 4, said.back).some(({ word }) => /^(let|left|letting)$/.test(word)))
  );
};

/** "we are at 14 hours", "Hour fourteen.", "past the 48-hour mark" */
const isReached = (said: Said): boolean => wordAt(said, said.to) === 'mark';

/** "That was ten days back.", "It was two days ago that I shot these." */
const isBackThen = (said: Said): boolean =>
  /^(ago|back)$/.test(wordAt(said, said.to)) && /^(thats|was|its)$/.test(wordAt(said, said.back));

/** "after nine days it still dents", "3 days. Still tacky.", "nearly three days and nothing" */
const isStillSo = (said: Said): boolean => {
  const next = said.words.slice(said.to, said.to + 7);
  const { sentence = 0, part } = said.words[said.at] ?? {};
  const begins = said.words[said.back]?.part !== part || /^(after|for|its|so)$/.test(wordAt(said, said.back));
  return (
    begins &&
    next.some(
      ({ word, sentence: there }, at) =>
        there <= sentence + 1 &&
        (/^(still|nothing|yet)$/.test(word) ||
          (word === 'no' && /^(change|better|different|luck|good)$/.test(next[at + 1]?.word ?? ''))),
    )
  );
};

const REASONS = [
  isIn,
  hasBeen,
  hasGoneBy,
  isSinceLaying,
  isAgeOfCoat,
  hasHad,
  isReached,
  isBackThen,
  isStillSo,
];

/** Whether a time is said as one that has gone by since the coat was laid, whatever else the text tells of laying it. */
export const isElapsed = (words: readonly Word[], at: number, to: number, back: number): boolean => {
  const said = { words, at, to, back };
  return REASONS.some((is) => is(said));
};
