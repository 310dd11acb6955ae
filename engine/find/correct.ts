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

/** What the letters of another ending come to at most, in slips. */
const OTHER_ENDING = 1;

/** Corrections less close than the nearest by more than this are dropped; so are all after the fourth. */
const BEHIND = 0.25;
const KEPT = 4;

/** Candidates asked of the searcher: it counts letters, `slips` then weighs them. */
const ASKED = 24;

/** Letters that a word may be longer or shorter than what was typed. */
const SPAN = 3;

const A = 97;
const LETTERS = 26;
const VOWELS = new Set([...'aeiouy'].map((letter) => letter.charCodeAt(0) - A));
/** The least that `slips` asks for a letter that one of two words lacks: one replaced is two of them. */
const LEAST = Float64Array.from({ length: LETTERS }, (_, letter) => (VOWELS.has(letter) ? 0.35 : 0.5));

/** How often each letter stands in a word; what is no letter is left out. */
const lettersOf = (word: string): Int8Array => {
  const counts = new Int8Array(LETTERS);
  for (let at = 0; at < word.length; at++) {
    const letter = word.charCodeAt(at) - A;
    if (letter >= 0 && letter < LETTERS) counts[letter] = (counts[letter] ?? 0) + 1;
  }
  return counts;
};

/** What turns one word into the other costs no less; letters that `typed` may yet bring cost nothing. */
const leastSlips = (typed: Int8Array, meant: Int8Array, typing: boolean): number => {
  let price = 0;
  for (let letter = 0; letter < LETTERS; letter++) {
    const more = (typed[letter] ?? 0) - (meant[letter] ?? 0);
    if (more > 0 || !typing) price += Math.abs(more) * (LEAST[letter] ?? 0);
  }
  return price;
};

/** At most `ASKED` words near a typed one. */
type Searcher = (typed: string, typing: boolean) => string[];

/**
 * Words near a typed one, found among those that share its first letter in either of their first two places (a slip
 * seldom changes the first letter, but may drop it or swap it with the next) and most of its letters: so few are left
 * that all can be searched.
 */
const searcher = (words: readonly string[]): Searcher => {
  const begun = new Map<string, { readonly word: string; readonly letters: Int8Array }[]>();
  for (const word of words) {
    const known = { word, letters: lettersOf(word) };
    for (const letter of new Set(word.slice(0, 2))) {
      const others = begun.get(letter);
      if (others) others.push(known);
      else begun.set(letter, [known]);
    }
  }
  return (typed, typing) => {
    const own = lettersOf(typed);
    const most = allowed(typed.length) + OTHER_ENDING;
    const near = (begun.get(typed.charAt(0)) ?? []).filter(
      ({ word, letters }) =>
        word.length >= typed.length - SPAN &&
        (typing || word.length <= typed.length + SPAN) &&
        leastSlips(own, letters, typing) <= most,
    );
    const fuse = new Fuse(
      near.map(({ word }) => word),
      { threshold: 0.45, distance: 40, ignoreFieldNorm: true },
    );
    return fuse.search(typed, { limit: ASKED }).map(({ item }) => item);
  };
};

/** Corrects single words against known ones (word → stem), nearest first. `typing`: the word may not be finished. */
export const corrector = (known: ReadonlyMap<string, string>): Corrector => {
  const search = searcher([...known.keys()]);
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
