import type { Word } from '../words/words.ts';
import { LAYING } from './more-coats.ts';

/** What "the second" is of, where it is no coat. */
const NOT_SAID_OF =
  /^(hand|time|times|man|day|days|week|thought|thoughts|floor|half|of|color|paint|stain|text|piece|one|try|night|i|we|it|they|he|she|thing|attempt|month|year|door|side)$/;
/** What a coat that was named by its number alone does: "the third is sticky", "after the second I saw". */
const DOES =
  /^(i|we|is|was|has|have|had|went|came|dried|did|on|and|now|still|looks?|looked|gave|took|started|got|feels?|felt|turned|cracked|bubbled|wrinkled|never|wont|in|dries|drying|cures|sits|sat|lies)$/;

/** What is done to a coat. */
const WORKED = /^(thinned|sanded|scuffed|brushed|rolled|sprayed|wiped|applied|laid)$/;

/** Whether a word opens a clause or a part between commas, "the" before it not counted. */
const beginsClause = (words: readonly Word[], at: number): boolean => {
  const opens = (index: number) =>
    words[index - 1] === undefined ||
    words[index - 1]?.clause !== words[index]?.clause ||
    words[index]?.comma === true;
  const isThen = /^(the|a)$/.test(words[at - 1]?.word ?? '') && words[at - 2]?.word === 'then';
  const back = isThen ? at - 1 : at;
  return opens(at) || (/^(the|then|in|a|my)$/.test(words[back - 1]?.word ?? '') && opens(back - 1));
};

/** Whether an ordinal stands for a coat: it begins a clause, or does what a coat does. */
export const isCoat = (words: readonly Word[], at: number): boolean => {
  const [before, here, after] = [words[at - 1], words[at], words[at + 1]];
  // "after the second one there are patches"
  if (after?.word === 'one')
    return (
      words[at + 2]?.part !== here?.part ||
      DOES.test(words[at + 2]?.word ?? '') ||
      /^(this|last|yesterday|around|at|about|by|with|before|after)$/.test(words[at + 2]?.word ?? '')
    );
  if (NOT_SAID_OF.test(after?.word ?? '') && !(after?.word === 'i' && before?.part === here?.part))
    return false;
  // "a second coat the next day, buffed on the third"
  if (
    before?.word === 'the' &&
    words[at - 2]?.word === 'on' &&
    words.some(({ word, from }) => word === 'day' && from < (here?.from ?? 0))
  )
    return false;
  if (beginsClause(words, at)) return true;
  // "put a third on", "laid a seventh last night"
  if (before?.word === 'a' && LAYING.test(words[at - 2]?.word ?? '')) return true;
  // "thinned the second a little"
  if (before?.word === 'the' && WORKED.test(words[at - 2]?.word ?? '')) return true;
  // "waiting for the fourth to harden"
  const isToDry = after?.word === 'to' && /^(dry|harden|cure|set)$/.test(words[at + 2]?.word ?? '');
  return (
    before?.part === here?.part &&
    /^(the|my)$/.test(before?.word ?? '') &&
    (after?.part !== here?.part || isToDry || DOES.test(after?.word ?? ''))
  );
};
