import type { Phrasebook } from './language.ts';
import type { PackedModel } from './model.ts';
import type { PackedRows } from './pack.ts';

export type FindKind = 'defect' | 'remedy' | 'rule' | 'lesson' | 'product' | 'glossary' | 'page';

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
  /** A line for the list of hits. */
  readonly says?: string;
}

/** What people typed, with the pages that answer it: `id` of a flaw, or `kind/id`. None: it is of other matters. */
export interface SaidPhrase {
  readonly say: string;
  readonly is: readonly string[];
  /** A stranger really typed it: such phrases tell how often a page is wanted. */
  readonly typed?: true;
}

export interface Hit {
  readonly id: string;
  readonly kind: FindKind;
  readonly title: string;
  /** How likely it is what was meant, 0 to 1; all that are listed add up to 1 at most. */
  readonly score: number;
  /** Listed for want of better: little of what was typed fits it. */
  readonly perhaps: boolean;
  /** Words of the query that this page answers, as they were typed. */
  readonly matched: readonly string[];
  /** A line on what the page answers. */
  readonly says: string;
}

interface FindEntry {
  readonly id: string;
  readonly kind: FindKind;
  readonly title: string;
  readonly says: string;
}

/**
 * Marks in rising order: how far each is from the one before, in two digits; and the rows that bear it, 1 as their
 * title.
 */
export type PackedNames = {
  readonly high: string;
  readonly low: string;
  readonly rows: PackedRows;
};

/** Made at build time by `buildIndex`, sent as JSON. */
export interface FindIndex {
  readonly documents: readonly FindEntry[];
  /** Each term's stem and the other forms that the documents use, as `packTerms` writes them. */
  readonly terms: string;
  /** For each term: its documents, and its weight in each in parts of `POSTING_UNIT`. */
  readonly postings: PackedRows;
  readonly book: Phrasebook;
  /** Marks of whole names and the rows that bear them: who types a name wants its page. */
  readonly names: PackedNames;
  /** Learned from all texts and phrases; its last class stands for other matters. */
  readonly learned: PackedModel;
}

/** The name of a page in phrases and labels: the id of a flaw, else `kind/id`. */
export const pageName = ({ kind, id }: { readonly kind: FindKind; readonly id: string }): string =>
  kind === 'defect' ? id : `${kind === 'glossary' ? 'term' : kind}/${id}`;

/** As much of an index as tells whose name was typed. */
export type FindNames = Pick<FindIndex, 'documents' | 'names' | 'book'>;
