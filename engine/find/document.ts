import type { Words } from '../model/words.ts';
import type { Phrasebook } from './language.ts';

export type FindKind = 'defect' | 'question' | 'remedy' | 'lesson' | 'glossary';

/** One page as the search sees it. */
export interface FindDocument {
  readonly id: string;
  readonly kind: FindKind;
  readonly title: string;
  /** Other names and what people type, a phrase each. */
  readonly also: readonly string[];
  /** What it looks and feels like. */
  readonly signs: readonly string[];
  readonly text: string;
}

/** Lay words, spellings and stop words: content, not code. */
export type LayWords = Words;

export interface Hit {
  readonly id: string;
  readonly kind: FindKind;
  readonly title: string;
  /** Comparable within one answer only; higher is better. */
  readonly score: number;
  /** Words of the query that this page answers, as they were typed. */
  readonly matched: string[];
}

/** Made at build time by `buildIndex`, sent as JSON. */
export interface FindIndex {
  readonly documents: readonly { readonly id: string; readonly kind: FindKind; readonly title: string }[];
  /** Each term's stem and the other forms that the documents use, joined by spaces; terms joined by commas. */
  readonly terms: string;
  /** For each term: document, weight in tenths, document, weight, … */
  readonly postings: readonly (readonly number[])[];
  readonly book: Phrasebook;
}
