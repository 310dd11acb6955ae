import { isLaying } from '../words/laying.ts';
import { isTop } from '../words/top-words.ts';
import type { Word } from '../words/words.ts';

/** "thirty years ago, when we made clocks": a story of then, unless it tells of a coat; `when` is the word behind the time. */
export const isOfAnotherStory = (words: readonly Word[], when: number): boolean => {
  const then = words[when];
  if (then?.word !== 'when' || then.sentence !== words[when - 1]?.sentence) return false;
  const ends = words.findIndex(({ part }, at) => at > when && part !== then.part);
  const to = ends < 0 ? words.length : ends;
  return !words.slice(when, to).some((word, index) => isTop(word) || isLaying(words, when + index));
};
