import type { FindKind } from './document.ts';

/**
 * What a word counts by where it stands: name, lay names, what people said, look, other text. Chosen on open phrases.
 */
export const FIELD = { title: 4, also: 3, said: 2, signs: 2, text: 0.7 } as const;

/** Weights of words in documents are sent in halves: finer ones rank no better. */
export const POSTING_UNIT = 2;

/** BM25: how soon more mentions stop adding, and how far a long page is held against it. */
export const FILLING = 4;
export const LENGTH_COUNTS = 0.42;

/** Flaws first: someone in a hurry asks what it is, not what a word means. */
export const KIND: Readonly<Record<FindKind, number>> = {
  defect: 1,
  rule: 0.9,
  page: 0.9,
  remedy: 0.8,
  lesson: 0.7,
  product: 0.7,
  glossary: 0.6,
};

/** How far a reading of a typed word is trusted, 1 being the word itself; a longer one may yet be typed. */
export const TRUST = { itself: 1, pieces: 0.95, corrected: 0.9, started: 0.8, longer: 0.5 } as const;

/** From this weight on a page counts as being about a word; a word in running text alone counts less. */
export const ABOUT = 2;

/** From this weight on a page is called by the word, by its own name or a lay one. */
export const NAMED = 2.5;

/** What a word that no page is called by weighs against one that some page is, when the share is reckoned. */
export const STRANGE = 1.8;

/** Bits of BM25 that double a chance, and how the two voices, words counted and words learned, are mixed. */
export const WARMTH = 2;
export const LEARNED = 0.7;
/** A chance no voice goes below, so that neither alone rules a page out. */
export const DOUBT = 1e-4;
