import Fuse from 'fuse.js/basic';
import { slips } from './slips.ts';
import { stem } from './stem.ts';

/** A known word that a typed one may have meant. */
export interface Correction {
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

/**
 * Searchers by letter, each over the words that have it first or second: a slip seldom changes the first letter
 * for another, but may drop it or swap it with the next. A tenth of the words is searched, and made ready, at a time.
 */
const searchers = (words: readonly string[]): ((typed: string, limit: number) => string[]) => {
  const made = new Map<string, Fuse<string>>();
  return (typed, limit) => {
    const letter = typed.charAt(0);
    let fuse = made.get(letter);
    if (!fuse) {
      const near = words.filter((word) => word.charAt(0) === letter || word.charAt(1) === letter);
      fuse = new Fuse(near, { threshold: 0.45, distance: 40, ignoreFieldNorm: true });
      made.set(letter, fuse);
    }
    return fuse.search(typed, { limit }).map(({ item }) => item);
  };
};

/** Corrects single words against known ones (word → stem), nearest first. `typing`: the word may not be finished. */
export const corrector = (known: ReadonlyMap<string, string>): Corrector => {
  const search = searchers([...known.keys()]);
  return (typed, typing) => {
    const limit = allowed(typed.length);
    if (limit === 0) return [];
    const part = stem(typed);
    const candidates = new Set(search(typed, ASKED));
    if (!typing && part.length > 3 && part !== typed) for (const word of search(part, ASKED)) candidates.add(word);
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
