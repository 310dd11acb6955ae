import { type Corrector, corrector } from './correct.ts';
import type { FindIndex, FindNames } from './document.ts';
import { type Language, language } from './language.ts';
import { type Model, unpackModel } from './model.ts';
import { unpackNames } from './names.ts';
import { unpackRows } from './pack.ts';
import { unpackTerms } from './terms.ts';

/** What a typed word may stand for. */
export interface Reading {
  /** Rows of postings, with trust 0 to 1. */
  readonly rows: ReadonlyMap<number, number>;
  /** What the word weighs in the share that must be covered: 0 for a slip of a word that says nothing. */
  readonly asks: number;
}

/** An index made ready to answer. */
export interface OpenIndex extends Model {
  readonly index: FindIndex;
  readonly say: Language;
  /** Every word of the documents → row of postings. */
  readonly words: ReadonlyMap<string, number>;
  /** Stem → row of postings. */
  readonly term: (part: string) => number | undefined;
  /** For each term: document, weight in parts of `POSTING_UNIT`, document, weight, … */
  readonly postings: readonly (readonly number[])[];
  /** For each mark of a name the rows that bear it, `~row` as its title. */
  readonly names: ReadonlyMap<number, readonly number[]>;
  /** Rareness of a row: inverse document frequency as in BM25. */
  readonly rareness: readonly number[];
  /** Nearest words of the documents, or stems of kin, to one that is neither. */
  readonly nearWords: Corrector;
  /** Nearest words among those that say nothing. */
  readonly nearEmpty: Corrector;
  readonly memo: Map<string, Reading>;
  /** Stems that unknown words were put right to. */
  readonly nearest: Map<string, string>;
}

/** Only a query with a slip needs a corrector. */
const whenNeeded = (make: () => Corrector): Corrector => {
  let made: Corrector | undefined;
  return (typed, typing) => {
    made ??= make();
    return made(typed, typing);
  };
};

export type OpenNames = Pick<OpenIndex, 'say' | 'names'>;

const openedNames = new WeakMap<FindNames, OpenNames>();

/** Opens the names of an index, once each. */
export const openNames = (index: FindNames): OpenNames => {
  const known = openedNames.get(index);
  if (known) return known;
  const fresh = { say: language(index.book), names: unpackNames(index.names) };
  openedNames.set(index, fresh);
  return fresh;
};

const opened = new WeakMap<FindIndex, OpenIndex>();

/** Opens an index, once each. */
export const open = (index: FindIndex): OpenIndex => {
  const known = opened.get(index);
  if (known) return known;
  const { say, names } = openNames(index);
  const words = new Map<string, number>();
  const rows = new Map<string, number>();
  const stems = new Map<string, string>();
  unpackTerms(index.terms).forEach((term, row) => {
    const [part] = term;
    rows.set(part, row);
    for (const word of term) {
      words.set(word, row);
      stems.set(word, part);
    }
  });
  const model = unpackModel(index.learned, [...rows.keys()]);
  for (const part of model.own) if (!stems.has(part)) stems.set(part, part);
  const count = index.documents.length;
  const postings = unpackRows(index.postings);
  const fresh: OpenIndex = {
    index,
    say,
    words,
    term: (part) => rows.get(part),
    postings,
    names,
    rareness: postings.map((posting) => {
      const holders = posting.length / 2;
      return Math.log(1 + (count - holders + 0.5) / (holders + 0.5));
    }),
    nearWords: whenNeeded(() => corrector(stems)),
    nearEmpty: whenNeeded(() => corrector(new Map(say.empty.map((word) => [word, word])))),
    memo: new Map(),
    nearest: new Map(),
    ...model,
  };
  opened.set(index, fresh);
  return fresh;
};
