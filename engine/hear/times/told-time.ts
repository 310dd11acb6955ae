import type { WordKind } from '../../model/word-kinds.ts';
import type { Match } from '../words/match.ts';
import type { OneOf } from '../words/one-of.ts';
import { isKind, type Word } from '../words/words.ts';

/** A time that a text names, words `from` to before `to`, with what stands around it. */
export type ToldTime = {
  readonly words: readonly Word[];
  readonly matches: readonly Match[];
  readonly from: number;
  readonly to: number;
  /** Words before it, between the same commas. */
  readonly before: readonly Word[];
  /** The next few words of its clause. */
  readonly after: readonly Word[];
  /** All words near it, between the same commas. */
  readonly own: readonly Word[];
  readonly isOfPart: (word: Word | undefined) => boolean;
};

const LOOKS_BACK = 12;
const LOOKS_ON = 5;
const NEAR = 25;

export const toldTime = (
  words: readonly Word[],
  matches: readonly Match[],
  from: number,
  to: number,
): ToldTime => {
  const { clause, part } = words[from] ?? {};
  const isOfPart = (word: Word | undefined) => word !== undefined && word.part === part;
  return {
    words,
    matches,
    from,
    to,
    before: words.slice(Math.max(0, from - LOOKS_BACK), from).filter(isOfPart),
    after: words.slice(to, to + LOOKS_ON).filter((word) => word.clause === clause),
    own: words.slice(Math.max(0, from - NEAR), to + NEAR).filter(isOfPart),
    isOfPart,
  };
};

export const has = (words: readonly Word[], what: OneOf): boolean =>
  words.some(({ word }) => what.test(word));

export const hasKind = (words: readonly Word[], ...kinds: readonly WordKind[]): boolean =>
  words.some((word) => isKind(word, ...kinds));
