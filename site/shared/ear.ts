import type { AtOnceLines, Hearing, LateHours, Mind } from '#engine/hear.ts';
import type { CallPlace } from '#engine/model/calls.ts';

/** The data behind the page that listens. */
export type Ear = {
  readonly hearing: Hearing;
  readonly mind: Mind;
  /** Questions with a pair of pictures, and flaws with a board. */
  readonly pictured: readonly string[];
  readonly boarded: readonly string[];
  /** Hours after which every can of a kind is dry to the touch, ready for a coat, and cured. */
  readonly dries: LateHours;
  /** What is done this minute where such a flaw is named, before anything is asked. */
  readonly atOnce: AtOnceLines;
  /** What she must hear of a flaw while the coat is wet or setting. */
  readonly whileWet: Readonly<Record<string, string>>;
  /** The same of a coat that sets, where it is not the same. */
  readonly whileSetting: Readonly<Record<string, string>>;
  /** Whom to call where, once something has happened. */
  readonly places: readonly CallPlace[];
};
