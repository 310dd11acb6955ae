import { type Corrector, corrector } from './correct.ts';
import type { FindIndex } from './document.ts';
import { type Language, language } from './language.ts';
import { stem } from './stem.ts';

/** An index made ready to answer. */
export interface OpenIndex {
  readonly index: FindIndex;
  readonly say: Language;
  /** Every word of the documents → row of postings. */
  readonly words: ReadonlyMap<string, number>;
  /** Stem → row of postings. */
  readonly term: (part: string) => number | undefined;
  /** Rareness of a row: inverse document frequency as in BM25. */
  readonly rareness: readonly number[];
  /** Nearest words of the documents to one that they have not. */
  readonly nearWords: Corrector;
  /** Nearest words among those that say nothing. */
  readonly nearEmpty: Corrector;
  readonly memo: Map<string, Reading>;
}

/** What a typed word may stand for. */
export interface Reading {
  /** Rows of postings, with trust 0 to 1. */
  readonly rows: ReadonlyMap<number, number>;
  /** What the word weighs in the share that must be covered: 0 for a slip of a word that says nothing. */
  readonly asks: number;
}

const opened = new WeakMap<FindIndex, OpenIndex>();

/** A corrector costs a few milliseconds to make; a query without slips needs none. */
const whenNeeded = (make: () => Corrector): Corrector => {
  let made: Corrector | undefined;
  return (typed, typing) => {
    made ??= make();
    return made(typed, typing);
  };
};

/** Opens an index, once each. */
export const open = (index: FindIndex): OpenIndex => {
  const known = opened.get(index);
  if (known) return known;
  const say = language(index.lay);
  const words = new Map<string, number>();
  const rows = new Map<string, number>();
  index.terms.split(',').forEach((forms, row) => {
    for (const [at, word] of forms.split(' ').entries()) {
      words.set(word, row);
      if (at === 0) rows.set(stem(word), row);
    }
  });
  const count = index.documents.length;
  const rareness = index.postings.map((posting) => {
    const holders = posting.length / 2;
    return Math.log(1 + (count - holders + 0.5) / (holders + 0.5));
  });
  const fresh: OpenIndex = {
    index,
    say,
    words,
    term: (part) => rows.get(part),
    rareness,
    nearWords: whenNeeded(() => corrector([...words.keys()])),
    nearEmpty: whenNeeded(() => corrector([...say.empty])),
    memo: new Map(),
  };
  opened.set(index, fresh);
  return fresh;
};
