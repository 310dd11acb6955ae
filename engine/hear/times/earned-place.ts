import type { Manner } from '../words/manner.ts';
import type { Match } from '../words/match.ts';
import type { SpokenSpan } from '../words/spoken-span.ts';
import type { Word } from '../words/words.ts';

/**
 * Whose time it is, and whether now: a time counts as that of the coat only where what is said of it says so. Where the
 * text leaves that open it stays likely, and is not taken as told.
 */
export type Place = {
  readonly words: readonly Word[];
  readonly matches: readonly Match[];
  readonly manner: Manner;
  /** Its words, `at` to before `to`. */
  readonly at: number;
  readonly to: number;
  readonly time: SpokenSpan;
};
