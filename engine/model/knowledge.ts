import type { Defect } from './defect.ts';
import type { DoingWords } from './doing.ts';
import type { EntryKind } from './kinds.ts';
import type { Lesson } from './lesson.ts';
import type { Product } from './product.ts';
import type { Question } from './question.ts';
import type { Remedy } from './remedy.ts';
import type { Rule } from './rule.ts';
import type { Source } from './source.ts';
import type { Term } from './term.ts';

/** What each kind of entry holds. */
type Held = {
  defect: Defect;
  question: Question;
  remedy: Remedy;
  rule: Rule;
  product: Product;
  lesson: Lesson;
  source: Source;
  term: Term;
  doing: DoingWords;
};

/** Line of a path in the entry's front matter; with `atKey`, of the key itself. */
export type LineOf = (path: readonly PropertyKey[], atKey?: boolean) => number;

/** A name that stands for what is written once for many files, and is not there. */
export type UnknownName = {
  readonly code: 'unknown-name';
  readonly what: string;
  readonly name: string;
  readonly nearest: string | undefined;
  readonly in: string;
};

/** One content file as read: nothing is checked yet. */
export type RawEntry = {
  readonly kind: EntryKind;
  readonly id: string;
  readonly file: string;
  readonly data: unknown;
  readonly lineOf: LineOf;
  /** A fault of the file itself, found while reading. */
  readonly broken?:
    | { readonly line: number; readonly message: string; readonly mend?: string; readonly colon?: string }
    | undefined;
  /** Faults met while what stands once for many files was filled in. */
  readonly told?: readonly { readonly path: readonly PropertyKey[]; readonly fault: UnknownName }[];
};

export type Entry<K extends EntryKind> = Held[K] & {
  readonly kindOf: K;
  readonly id: string;
  readonly file: string;
  readonly lineOf: LineOf;
};

/** An entry of whichever kind; `kindOf` tells. */
export type AnyEntry = { [K in EntryKind]: Entry<K> }[EntryKind];
