import Fuse from 'fuse.js/basic';
import { slips } from './slips.ts';
import { stem } from './stem.ts';

/** A known word that a typed one may have meant. */
interface Correction {
  readonly word: string;
  readonly stem: string;
  /** 0 to 1. */
  readonly closeness: number;
}

export type Corrector = (typed: string, typing: boolean) => Correction[];

/** Slips allowed in a word of this length: none up to three letters, else one or better than one in four. */
const allowed = (length: number): number => (length < 4 ? 0 : Math.min(2.5, Math.max(1, length * 0.28)));

/** Price of another ending, in slips. */
const ENDING = 0.4;

/** Corrections less close than the nearest by more than this are dropped; so are all after the fourth. */
const BEHIND = 0.25;
const KEPT = 4;

/** Candidates asked of the searcher: it counts letters, `slips` then weighs them. */
const ASKED = 24;

/** Letters that a word may be longer or shorter than what was typed. */
const SPAN = 3;

/**
 * Searchers by letter and length, each over the words that have the letter first or second: a slip seldom changes
 * the first letter for another, but may drop it or swap it with the next. So few words are searched at a time.
 */
const searchers = (words: readonly string[]): ((typed: string, typing: boolean) => string[]) => {
  const made = new Map<string, Fuse<string>>();
  return (typed, typing) => {
    const letter = typed.charAt(0);
    const longest = typing ? Number.POSITIVE_INFINITY : typed.length + SPAN;
    const key = `${letter}${typed.length}${typing}`;
    let fuse = made.get(key);
    if (!fuse) {
      const near = words.filter(
        (word) =>
          (word.charAt(0) === letter || word.charAt(1) === letter) &&
          word.length >= typed.length - SPAN &&
          word.length <= longest,
      );
      fuse = new Fuse(near, { threshold: 0.45, distance: 40, ignoreFieldNorm: true });
      made.set(key, fuse);
    }
    return fuse.search(typed, { limit: ASKED }).map(({ item }) => item);
  };
};

/** Corrects single words against known ones (word → stem), nearest first. `typing`: the word may not be finished. */
export const corrector = (known: ReadonlyMap<string, string>): Corrector => {
  const search = searchers([...known.keys()]);
  return (typed, typing) => {
    const limit = allowed(typed.length);
    if (limit === 0) return [];
    const part = stem(typed);
    const candidates = new Set(search(typed, typing));
    if (!typing && part.length > 3 && part !== typed)
      for (const word of search(part, typing)) candidates.add(word);
    const found: Correction[] = [];
    for (const word of candidates) {
      const its = known.get(word) ?? word;
      const made = typing
        ? slips(typed, word.slice(0, typed.length))
        : Math.min(slips(typed, word), slips(part, its) + ENDING);
      if (made <= limit) found.push({ word, stem: its, closeness: 1 - made / (2.5 * limit) });
    }
    found.sort((a, b) => b.closeness - a.closeness || (a.word < b.word ? -1 : 1));
    const least = (found[0]?.closeness ?? 0) - BEHIND;
    return found.filter(({ closeness }) => closeness > least).slice(0, KEPT);
  };
};
