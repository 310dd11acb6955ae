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

/** Line of a path in the entry's front matter; with `atKey`, of the field itself. */
export type LineOf = (path: readonly PropertyKey[], atKey?: boolean) => number;

/** A name that stands for what is written once for many files, and is not there. */
export type UnknownName = {
  readonly code: 'unknown-name';
  readonly what: string;
  readonly name: string;
  readonly nearest: string | undefined;
  readonly in: string;
};

/** A file that no parser can read, told in plain words. */
export type Unreadable =
  | { readonly code: 'bad-yaml'; readonly what: string; readonly mend: string }
  | {
      readonly code: 'no-front-matter';
      /** The first line that holds something. */
      readonly first?: string;
      /**
       * No line ---, the second alone, something above the first, no fields, another row of dashes, or no second line.
       */
      readonly why: 'none' | 'closed' | 'above' | 'empty' | 'dashes' | 'open';
    }
  | {
      readonly code: 'needs-quotes';
      readonly why: 'colon' | 'comma';
      readonly text: string;
      /** The line as it is to be written, where that is known. */
      readonly write?: string | undefined;
    };

/** One content file as read: nothing is checked yet. */
export type RawEntry = {
  readonly kind: EntryKind;
  readonly id: string;
  readonly file: string;
  readonly data: unknown;
  readonly lineOf: LineOf;
  /** A fault of the file itself, found while reading. */
  readonly broken?: { readonly line: number; readonly fault: Unreadable } | undefined;
  /** Faults met while what stands once for many files was filled in. */
  readonly told?: readonly { readonly line: number; readonly fault: UnknownName }[];
  /** Where a path of `data` stands in the file; the same path where nothing was filled in before it. */
  readonly inFile?: (path: readonly PropertyKey[]) => readonly PropertyKey[];
};

export type Entry<K extends EntryKind> = Held[K] & {
  readonly kindOf: K;
  readonly id: string;
  readonly file: string;
  readonly lineOf: LineOf;
};

/** An entry of whichever kind; `kindOf` tells. */
export type AnyEntry = { [K in EntryKind]: Entry<K> }[EntryKind];
