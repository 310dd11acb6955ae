import type { Manner } from './manner.ts';
import type { Ear, Match } from './match.ts';
import type { Word } from './words.ts';

/** A text as its times are read from it. */
export type Telling = {
  readonly ear: Ear;
  readonly words: readonly Word[];
  readonly matches: readonly Match[];
  readonly manner: Manner;
  /** Whether it tells anywhere that a coat was laid. */
  readonly lays: boolean;
};
