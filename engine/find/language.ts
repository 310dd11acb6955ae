import type { LayWords } from './document.ts';
import { stem } from './stem.ts';
import { wordsOf } from './word.ts';

/** A word that counts: as typed, as spelled here, and its stem. */
export interface Token {
  readonly typed: string;
  readonly word: string;
  readonly stem: string;
}

export interface Language {
  readonly tokens: (text: string) => Token[];
  /** Words that say nothing, single ones only. */
  readonly empty: ReadonlySet<string>;
  /** Whether a word, or what it is the plural of, is one of other matters. */
  readonly elsewhere: (word: string) => boolean;
  /** Stems that a stem may mean in the trade. */
  readonly meanings: (part: string) => readonly string[];
}

/** Reads texts and queries in the same way, with the words that the content knows. */
export const language = (lay: LayWords): Language => {
  const stop = new Set(lay.stop);
  const elsewhere = new Set(lay.elsewhere);
  const spellings = new Map(Object.entries(lay.spellings));
  const meanings = new Map<string, string[]>();
  for (const [said, meant] of Object.entries(lay.synonyms)) {
    const part = stem(said);
    meanings.set(part, [...(meanings.get(part) ?? []), ...meant.map(stem)]);
  }
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
    empty: new Set(lay.stop.filter((word) => !word.includes(' '))),
    elsewhere: (word) => elsewhere.has(word) || elsewhere.has(word.replace(/s$/, '')),
    meanings: (part) => meanings.get(part) ?? [],
  };
};
