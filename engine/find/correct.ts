import Fuse from 'fuse.js/basic';
import { slips } from './slips.ts';
import { stem } from './stem.ts';

/** A known word that a typed one may have meant. */
export interface Correction {
  readonly word: string;
  readonly slips: number;
  /** 0 to 1. */
  readonly closeness: number;
}

export type Corrector = (typed: string, typing: boolean) => Correction[];

/** Slips allowed in a word of this length: none up to three letters, else one or better than one in four. */
const allowed = (length: number): number => (length < 4 ? 0 : Math.min(2.5, Math.max(1, length * 0.28)));

/** Price of another ending, in slips. */
const ENDING = +(process.env.END ?? 0.4);

const KEPT = 3;

/** Slips between two words, or between their stems where only the ending differs. */
const between = (typed: string, meant: string): number =>
  Math.min(slips(typed, meant), slips(stem(typed), stem(meant)) + ENDING);

/** Corrects single words against known ones, nearest first. `typing`: the word may not be finished. */
export const corrector = (words: readonly string[]): Corrector => {
  const fuse = new Fuse(words, { threshold: 0.45, distance: 40, ignoreFieldNorm: true });
  return (typed, typing) => {
    const limit = allowed(typed.length);
    if (limit === 0) return [];
    const found: Correction[] = [];
    for (const { item } of fuse.search(typed, { limit: 24 })) {
      const made = typing ? slips(typed, item.slice(0, typed.length)) : between(typed, item);
      if (made <= limit) found.push({ word: item, slips: made, closeness: 1 - made / (2.5 * limit) });
    }
    found.sort((a, b) => b.closeness - a.closeness || (a.word < b.word ? -1 : 1));
    const best = found[0]?.closeness ?? 0;
    return found.filter(({ closeness }) => closeness > best - 0.15).slice(0, KEPT);
  };
};
