import Fuse from 'fuse.js/basic';
import { slips } from './slips.ts';

/** A known word that a typed one may have meant. */
export interface Correction {
  readonly word: string;
  readonly slips: number;
  /** 0 to 1. */
  readonly closeness: number;
}

/** Slips allowed in a word of this length: none up to three letters, else about one in four. */
const allowed = (length: number): number => (length < 4 ? 0 : Math.min(2.5, Math.max(1, length * 0.28)));

const KEPT = 3;

/** Corrects single words against the words of the documents. `typing`: the word may not be finished. */
export const corrector = (words: readonly string[]): ((typed: string, typing: boolean) => Correction[]) => {
  const fuse = new Fuse(words, { threshold: 0.45, distance: 40, ignoreFieldNorm: true });
  return (typed, typing) => {
    const limit = allowed(typed.length);
    if (limit === 0) return [];
    const found: Correction[] = [];
    for (const { item } of fuse.search(typed, { limit: 24 })) {
      const meant = typing ? item.slice(0, typed.length) : item;
      const made = slips(typed, meant);
      if (made <= limit) found.push({ word: item, slips: made, closeness: 1 - made / (2.5 * limit) });
    }
    found.sort((a, b) => b.closeness - a.closeness || (a.word < b.word ? -1 : 1));
    const best = found[0]?.closeness ?? 0;
    return found.filter(({ closeness }) => closeness > best - 0.15).slice(0, KEPT);
  };
};
