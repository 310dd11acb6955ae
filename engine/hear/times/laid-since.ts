import { isLaying } from '../words/laying.ts';
import type { Manner } from '../words/manner.ts';
import type { Match } from '../words/match.ts';
import { oneOf } from '../words/one-of.ts';
import { isTop, isTopNoun } from '../words/top-words.ts';
import type { Word } from '../words/words.ts';

export const COAT = oneOf('coats?|layers?');
const ANOTHER = oneOf('another|first|second|third|fourth|fifth|next|final|last|more|fresh|new');
const LAYS_NO_COAT = oneOf('buffed|polished|finished|done|refinished');
/** "on my latex painted table" */
const NO_DOER = oneOf('the|a|was|were|had|is|its|that|been|my|latex|spray|just');
const NO_ORDER = oneOf('the|my|our|this|that|for|in|on');
const BEGINS = oneOf('began|begun|started|put|laid|brushed|sprayed|rolled|applied|did|wiped|with');
const OF_ANOTHER_TIME = oneOf('when|before|since|after|which|that');

/** Whether the word at `at` tells of something done, and asks, plans, fears and denies nothing. */
export const isTold = (words: readonly Word[], manner: Manner, at: number): boolean => {
  const match: Match = { sense: '', kind: '', of: [], from: at, to: at + 1, size: 1 };
  return (
    words[at]?.asks === false &&
    !manner.notYet(match) &&
    !manner.feared(match) &&
    manner.denied(match) === undefined
  );
};

const wordAt = (words: readonly Word[], at: number): string => words[at]?.word ?? '';

const hasNear = (
  words: readonly Word[],
  from: number,
  to: number,
  is: (word: Word | undefined) => boolean,
): boolean => {
  for (let at = Math.max(0, from); at < to; at++) if (is(words[at])) return true;
  return false;
};
const isAnother = (word: Word | undefined): boolean => ANOTHER.test(word?.word ?? '');
const isOfAnotherTime = (word: Word | undefined): boolean => OF_ANOTHER_TIME.test(word?.word ?? '');

const laysHere = (words: readonly Word[], at: number): boolean => {
  const word = wordAt(words, at);
  const before = wordAt(words, at - 1);
  // "began the second coat", "a second coat": and not "the second coat is tacky"
  if (COAT.test(word))
    return (
      ANOTHER.test(before) && (!NO_ORDER.test(wordAt(words, at - 2)) || BEGINS.test(wordAt(words, at - 3)))
    );
  if (word === 'then')
    return words.slice(at, at + 6).some((one) => one.clause === words[at]?.clause && isTopNoun(one));
  if (word === 'went')
    return (
      wordAt(words, at + 1) === 'on' &&
      (hasNear(words, at - 6, at, isTop) || hasNear(words, at - 6, at, isAnother))
    );
  if (word === 'apply' || word === 'applying') return before === 'to';
  return (
    !NO_DOER.test(before) &&
    !LAYS_NO_COAT.test(word) &&
    isLaying(words, at) &&
    (word !== 'put' || hasNear(words, at, at + 7, isTop))
  );
};

const known = new WeakMap<readonly Word[], readonly number[]>();

/** The words of a text that tell of a coat laid in its story; looked up once a text. */
export const laidIn = (words: readonly Word[], manner: Manner): readonly number[] => {
  const found =
    known.get(words) ??
    words.flatMap((_, at) =>
      laysHere(words, at) && !hasNear(words, at - 3, at, isOfAnotherTime) && isTold(words, manner, at)
        ? [at]
        : [],
    );
  known.set(words, found);
  return found;
};
