import type { Manner } from '../words/manner.ts';
import type { Ear } from '../words/match.ts';
import { oneOf } from '../words/one-of.ts';
import { numberAt } from '../words/spans.ts';
import { stretch } from '../words/stretch.ts';
import type { Word } from '../words/words.ts';
import { COAT } from './coat-counts.ts';

/** More than so many are not laid beside those told. */
const MOST_MORE = 6;

/** Coats told together: "two coats …, then two more on" are four. */
export const moreOf = (ear: Ear, words: readonly Word[], at: number): number | undefined => {
  const more = words[at];
  if (more?.word !== 'more') return undefined;
  const after = words[at + 1];
  if (
    after &&
    !COAT.test(after.word) &&
    !/^(on|over|of|since|later|each|whites?|the|next|that|today|yesterday|this|after|with)$/.test(
      after.word,
    ) &&
    after.part === more.part
  )
    return undefined;
  if (ear.units.has(after?.word ?? '')) return undefined;
  const count = numberAt(ear, words[at - 1]);
  return count !== undefined && Number.isInteger(count) && count >= 1 && count <= MOST_MORE
    ? count
    : undefined;
};

/** What lays a coat. */
export const LAYING = /^(brushed|rolled|sprayed|wiped|applied|put|added|laid)$/;

/** "I put on another this morning": a coat, though it is not named. */
const isOneMoreOn = (words: readonly Word[], at: number): boolean => {
  const [here, after] = [words[at], words[at + 1]];
  if (here?.word !== 'another' || !LAYING.test(words[at - 2]?.word ?? '') || words[at - 1]?.word !== 'on')
    return false;
  return (
    after?.part !== here.part || /^(this|last|yesterday|today|after|over|and|the|then|on)$/.test(after.word)
  );
};

const ONE_MORE = oneOf('another|new|a');

/** "and a last light coat", "24 hours later the last coat"; "the last coat is dull" is one of those told. */
const isLastOne = (words: readonly Word[], at: number): boolean => {
  const [then, before, here] = words.slice(Math.max(0, at - 2), at + 1);
  if (!/^(last|final)$/.test(here?.word ?? '') || before?.part !== here?.part) return false;
  return (
    /^(a|one)$/.test(before?.word ?? '') ||
    (before?.word === 'the' && then?.part === here?.part && /^(then|later)$/.test(then?.word ?? ''))
  );
};

/** "then a thick one" */
const isThenOne = (words: readonly Word[], at: number): boolean =>
  words[at]?.word === 'a' &&
  words[at - 1]?.word === 'then' &&
  words[at + 2]?.word === 'one' &&
  words[at + 2]?.part === words[at]?.part;

/** "brushed a coat", "put on a thin coat" */
const isLaidBefore = (words: readonly Word[], at: number): boolean => {
  const [put, before] = words.slice(Math.max(0, at - 2), at).filter(({ part }) => part === words[at]?.part);
  return before
    ? LAYING.test(before.word) || (before.word === 'on' && LAYING.test(put?.word ?? ''))
    : LAYING.test(put?.word ?? '');
};

/** "another coat", "a new coat", "brushed a coat": one more was laid, if it is neither asked nor planned. */
export const isAnother = (words: readonly Word[], manner: Manner, at: number): boolean => {
  const here = words[at];
  if (!here || here.asks || !(ONE_MORE.test(here.word) || isLastOne(words, at))) return false;
  const before = words[at - 1];
  if (isOneMoreOn(words, at)) return !manner.notYet(stretch(at, at + 1));
  if (isThenOne(words, at)) return !manner.notYet(stretch(at, at + 1));
  if (here.word === 'a' && !isLaidBefore(words, at)) return false;
  if (before?.part === here.part && /^(before|add|need|needs|than|for|every|after)$/.test(before.word))
    return false;
  return (
    words.slice(at + 1, at + 3).some((next) => /^(coat|layer)$/.test(next.word) && next.part === here.part) &&
    !manner.notYet(stretch(at, at + 1)) &&
    manner.denied(stretch(at, at + 1)) === undefined
  );
};
