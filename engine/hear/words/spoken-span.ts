import type { Span } from './words.ts';

/** A time told: how long ago, in hours. */
export type SpokenSpan = Span & {
  readonly least: number;
  readonly likely: number;
  readonly most: number;
  readonly sure: number;
  /** Beside a word of laying. */
  readonly laid: boolean;
  /** Between the same commas. */
  readonly near?: boolean;
  /** Told from today: "ago", "yesterday", "nine days now". */
  readonly now?: boolean;
};
