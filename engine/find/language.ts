import type { Words } from '../model/words.ts';
import { stem } from './stem.ts';
import { wordsOf } from './word.ts';

/** A word that counts: as typed, as spelled here, and its stem. */
export interface Token {
  readonly typed: string;
  readonly word: string;
  readonly stem: string;
}

/** The lay words made ready at build time: plain data, lists joined by commas. */
export interface Phrasebook {
  readonly stop: string;
  readonly silent: string;
  readonly spellings: Readonly<Record<string, string>>;
  /** Stem of a lay word → stems of the trade words that it may mean. */
  readonly meanings: Readonly<Record<string, readonly string[]>>;
}

/** Stems the lay words once, so that a page has none to stem before its first answer. */
export const phrasebook = (lay: Words): Phrasebook => {
  const meanings = new Map<string, string[]>();
  for (const [said, meant] of Object.entries(lay.synonyms)) {
    const part = stem(said);
    meanings.set(part, [...new Set([...(meanings.get(part) ?? []), ...meant.map(stem)])]);
  }
  return {
    stop: lay.stop.join(','),
    silent: lay.silent.join(','),
    spellings: lay.spellings,
    meanings: Object.fromEntries(meanings),
  };
};

export interface Language {
  readonly tokens: (text: string) => Token[];
  /** Words that say nothing, single ones only. */
  readonly empty: readonly string[];
  /** All words but those that never say anything: what is learned from needs the small ones, too. */
  readonly all: (text: string) => Token[];
  /** Stems that a stem may mean in the trade. */
  readonly meanings: (part: string) => readonly string[];
  /** Stems that have a meaning. */
  readonly lay: readonly string[];
}

/** Reads texts and queries in the same way, with the words that the content knows. */
export const language = (book: Phrasebook): Language => {
  const stop = new Set(book.stop.split(','));
  const silent = new Set(book.silent.split(','));
  const spellings = new Map(Object.entries(book.spellings));
  const meanings = new Map(Object.entries(book.meanings));
  return {
    tokens: (text) => {
      const found: Token[] = [];
      const typed = wordsOf(text);
      for (let at = 0; at < typed.length; at++) {
        const said = typed[at] ?? '';
        if (stop.has(`${said} ${typed[at + 1]}`)) at++;
        else {
          const word = spellings.get(said) ?? said;
          if (!stop.has(word)) found.push({ typed: said, word, stem: stem(word) });
        }
      }
      return found;
    },
    empty: [...stop].filter((word) => !word.includes(' ')),
    all: (text) =>
      wordsOf(text).flatMap((said) => {
        const word = spellings.get(said) ?? said;
        return silent.has(word) ? [] : [{ typed: said, word, stem: stem(word) }];
      }),
    meanings: (part) => meanings.get(part) ?? [],
    lay: [...meanings.keys()],
  };
};
