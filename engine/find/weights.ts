import type { FindKind } from './document.ts';

/** What a word counts by where it stands: name, lay names, look, other text. Chosen on half of the test phrases. */
export const FIELD = { title: 4, also: 3, signs: 2, text: 0.7 } as const;

/** Flaws first: someone in a hurry asks what it is, not what a word means. */
export const KIND: Readonly<Record<FindKind, number>> = {
  defect: 1,
  remedy: 0.8,
  question: 0.7,
  lesson: 0.7,
  glossary: 0.7,
};

/** How far a reading of a typed word is trusted, 1 being the word itself. */
export const TRUST = { itself: 1, pieces: 0.95, corrected: 0.9, started: 0.8, meant: 0.5 } as const;

/** From this weight on a page counts as being about a word; a word in running text alone counts less. */
export const ABOUT = 2;

/** From this weight on a page is called by the word, by its own name or a lay one. */
export const NAMED = 2.5;

/** A word that one page alone has tells little of whether the query belongs here at all. */
export const LONE = 0.9;

/** What a word that no page is called by weighs against one that some page is, when the share is reckoned. */
export const STRANGE = 1.8;

/** What a word of other matters weighs there. */
export const ELSEWHERE = 3;

/** Below this share of the words of the query nothing is listed. */
export const SHARE = 0.39;
