import type { Answer } from '../../case/case.ts';
import type { FactName } from '../../model/facts.ts';
import type { AskedFor, StillDrying } from './lexicon.ts';
import type { Span } from './words.ts';

/** What a finding rests on, and how far it is trusted. */
type Ground = {
  /** 0 to 1; from `SURE` on it is taken as told, below it is only likely. */
  readonly sure: number;
  readonly rests: readonly Span[];
  /** Words that speak against it. */
  readonly against: readonly Span[];
};

/** A fact that a text tells. */
export type HeardFact = Ground & {
  readonly fact: FactName;
  readonly value: string | number;
  /** For a number: least and most. */
  readonly range?: readonly [number, number];
};

/** Values that a text leaves open while it shuts out the others: "poly" is no shellac. */
export type HeardAmong = Ground & { readonly fact: FactName; readonly values: readonly string[] };

/** An answer to a question that a text gives unasked. */
export type HeardSign = Ground & { readonly question: string; readonly answer: Exclude<Answer, 'unsure'> };

/** A flaw that is plainly called by its name. */
export type HeardName = {
  /** The flaws that are called so; the kind of finish tells which is meant. */
  readonly flaws: readonly string[];
  readonly rests: readonly Span[];
  /** Said to be not there: "no bubbles". */
  readonly denied: boolean;
};

/** A rule that the words call for: what they name can hurt someone. */
export type HeardDanger = {
  readonly rule: string;
  readonly rests: readonly Span[];
  /** Told of a step that is over. */
  readonly past?: boolean;
};

/** A case of a rule that can not wait: harm that is under way or about to be done. */
export type HeardUrgent = { readonly rule: string; readonly at: number };

/** All that was understood of a text. Spans count UTF-16 units of the text. */
export type Heard = {
  readonly text: string;
  readonly facts: readonly HeardFact[];
  readonly among: readonly HeardAmong[];
  readonly signs: readonly HeardSign[];
  /** Flaws called by their names. */
  readonly names: readonly HeardName[];
  /** Flaws that are only feared, or to be kept away, by their ids. */
  readonly feared?: readonly string[] | undefined;
  /** Where a top coat is named. */
  readonly named: readonly Span[];
  /** Words that tell of a person or an animal, where the same words may name a flaw. */
  readonly aside?: readonly Span[] | undefined;
  /** As what degrees without a unit were taken, in a sentence. */
  readonly taken?: string | undefined;
  readonly dangers: readonly HeardDanger[];
  readonly urgent: readonly HeardUrgent[];
  /** It asks which top coat to take, and tells of none that lies there. */
  readonly asksWhich: boolean;
  /** It asks no more than what a word means. */
  readonly asksWord: boolean;
  /** It is soft within its time, and nothing else is seen: what is said of that. */
  readonly stillDrying?: StillDrying | undefined;
  /** It asks for what has an answer of its own, and tells of nothing that is seen. */
  readonly asksFor?: AskedFor | undefined;
  /** What it asks for besides, in another question. */
  readonly alsoAsks?: AskedFor | undefined;
  /** Some of it is told in another language than English: what is understood may be the least of it. */
  readonly otherTongue: boolean;
};

/** From here on what was heard counts as told. */
export const SURE = 0.7;
