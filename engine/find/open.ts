import { type Correction, corrector } from './correct.ts';
import type { FindIndex } from './document.ts';
import { type Language, language } from './language.ts';

/** An index made ready to answer. */
export interface OpenIndex {
  readonly index: FindIndex;
  readonly say: Language;
  readonly words: readonly string[];
  /** Stem → row of postings. */
  readonly term: (stem: string) => number | undefined;
  /** Rareness of a row: inverse document frequency as in BM25. */
  readonly rareness: readonly number[];
  /** Rareness of a word that no document has. */
  readonly unknown: number;
  readonly correct: (typed: string, typing: boolean) => Correction[];
  readonly memo: Map<string, Reading>;
}

/** What a typed word may stand for. */
export interface Reading {
  /** Rows of postings, with trust 0 to 1. */
  readonly rows: ReadonlyMap<number, number>;
  /** False for a slip of a word that says nothing. */
  readonly counts: boolean;
}

const opened = new WeakMap<FindIndex, OpenIndex>();

/** Opens an index once; the searcher that corrects words is made when it is first needed. */
export const open = (index: FindIndex): OpenIndex => {
  const known = opened.get(index);
  if (known) return known;
  const say = language(index.lay);
  const words = index.words.split(' ');
  const rows = new Map<string, number>();
  words.forEach((word, at) => {
    for (const { stem } of say.tokens(word)) rows.set(stem, index.termOf[at] ?? -1);
  });
  const count = index.documents.length;
  const rareness = index.postings.map((posting) => {
    const holders = posting.length / 2;
    return Math.log(1 + (count - holders + 0.5) / (holders + 0.5));
  });
  let correct: OpenIndex['correct'] | undefined;
  const fresh: OpenIndex = {
    index,
    say,
    words,
    term: (stem) => rows.get(stem),
    rareness,
    unknown: Math.log(1 + (count + 0.5) / 0.5),
    correct: (typed, typing) => {
      correct ??= corrector([...words, ...say.empty]);
      return correct(typed, typing);
    },
    memo: new Map(),
  };
  opened.set(index, fresh);
  return fresh;
};
