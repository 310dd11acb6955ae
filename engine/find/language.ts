import type { SearchWords } from '../model/search-words.ts';
import { stem } from './stem.ts';
import { wordsOf } from './word.ts';

/** A word that counts: as typed, as spelled here, and its stem. */
export interface Token {
  readonly typed: string;
  readonly word: string;
  readonly stem: string;
}

/** Spellings and words that say nothing as they are sent: plain data, lists joined by commas. */
export interface Phrasebook {
  readonly stop: string;
  readonly silent: string;
  readonly spellings: Readonly<Record<string, string>>;
}

export const phrasebook = ({ stop, silent, spellings }: SearchWords): Phrasebook => ({
  stop: stop.join(','),
  silent: silent.join(','),
  spellings,
});

export interface Language {
  readonly tokens: (text: string) => Token[];
  /** Words that say nothing, single ones only. */
  readonly empty: readonly string[];
  /** All words but those that never say anything: what is learned from needs the small ones, too. */
  readonly all: (text: string) => Token[];
}

/** Reads texts and queries in the same way, with the words that the content knows. */
export const language = (book: Phrasebook): Language => {
  const stop = new Set(book.stop.split(','));
  const silent = new Set(book.silent.split(','));
  const spellings = new Map(Object.entries(book.spellings));
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
  };
};
