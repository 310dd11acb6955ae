import type { Kin } from '../model/kin.ts';
import type { SearchWords } from '../model/search-words.ts';
import { keysOf } from '../plain/entry-of.ts';
import { type FindDocument, type FindIndex, type FindNames, pageName, type SaidPhrase } from './document.ts';
import { type KinOf, kinOf } from './kin.ts';
import { type Language, language, phrasebook } from './language.ts';
import { type Example, featuresOf, learn } from './learn.ts';
import { packModel } from './model.ts';
import { packNames } from './names.ts';
import { packRows } from './pack.ts';
import { packTerms } from './terms.ts';
import { FIELD, FILLING, LENGTH_COUNTS, POSTING_UNIT } from './weights.ts';

/** Weight of each stem in one document by where it stands, before rareness and length. */
const weights = (document: FindDocument, said: readonly string[], say: Language): Map<string, number> => {
  const fields = {
    title: [document.title],
    also: document.also,
    said,
    signs: document.signs,
    text: [document.text],
  };
  const found = new Map<string, number>();
  for (const field of keysOf(fields))
    for (const phrase of fields[field])
      for (const { stem } of say.tokens(phrase)) found.set(stem, (found.get(stem) ?? 0) + FIELD[field]);
  return found;
};

/** What strangers really typed counts for more than what an author thought of. */
const TYPED = 2;

/** Texts of a page's own: trusted less than what somebody typed of whom the answer is known. */
const OWN = { title: 0.6, also: 0.6, signs: 0.6, text: 0.4 } as const;

const examplesOf = (
  documents: readonly FindDocument[],
  phrases: readonly SaidPhrase[],
  rowOf: ReadonlyMap<string, number>,
  say: Language,
  kin: KinOf,
): Example[] => {
  const example = (text: string, right: readonly number[], weight: number, own: boolean): Example => ({
    features: featuresOf(
      say.all(text).map(({ stem }) => stem),
      kin,
    ),
    right,
    weight,
    own,
  });
  const elsewhere = documents.length;
  return [
    ...documents.flatMap((document, row) => [
      example(document.title, [row], OWN.title, true),
      ...document.also.map((phrase) => example(phrase, [row], OWN.also, true)),
      ...asksFor(document).map((phrase) => example(phrase, [row], 1, true)),
      ...document.signs.map((phrase) => example(phrase, [row], OWN.signs, true)),
      example(document.text, [row], OWN.text, true),
    ]),
    ...phrases.map(({ say: text, is, typed }) => {
      const right = is.length ? is.flatMap((page) => rowOf.get(page) ?? []) : [elsewhere];
      return example(text, right, typed ? TYPED : 1, false);
    }),
  ];
};

/**
 * How much what strangers typed, of all matters together, tells of the next one; a page that none wanted counts as so
 * many.
 */
const PRIOR_COUNTS = 0.35;
const UNWANTED = 3;

/** What is sooner meant whatever the words: pages that strangers wanted often. Other matters stand for themselves. */
const priorOf = (
  documents: readonly FindDocument[],
  phrases: readonly SaidPhrase[],
  rowOf: ReadonlyMap<string, number>,
): number[] => {
  const wanted = documents.map(() => UNWANTED);
  for (const { is, typed } of phrases) {
    const row = rowOf.get(is[0] ?? '');
    if (typed && row !== undefined) wanted[row] = (wanted[row] ?? 0) + 1;
  }
  const logs = wanted.map((count) => PRIOR_COUNTS * Math.log(count));
  const mean = logs.reduce((sum, log) => sum + log, 0) / Math.max(1, logs.length);
  return logs.map((log) => log - mean);
};

/** A word of the trade is asked for by what it means. */
const asksFor = ({ kind, title }: FindDocument): string[] =>
  kind === 'glossary' ? [`what is ${title}`, `${title} meaning`, `what does ${title} mean`] : [];

/** Words met in any field of a document, or said more than once, with their stems: what was said once may be a slip. */
const formsOf = (
  documents: readonly FindDocument[],
  said: readonly (readonly string[])[],
  say: Language,
): Map<string, Set<string>> => {
  const forms = new Map<string, Set<string>>();
  const times = new Map<string, number>();
  const meet = (phrase: string, of: (word: string) => boolean): void => {
    for (const { word, stem } of say.tokens(phrase))
      if (of(word)) forms.set(stem, (forms.get(stem) ?? new Set()).add(word));
  };
  for (const { title, also, signs, text } of documents)
    for (const phrase of [title, ...also, ...signs, text]) meet(phrase, () => true);
  const phrases = said.flat();
  for (const phrase of phrases)
    for (const { word } of say.tokens(phrase)) times.set(word, (times.get(word) ?? 0) + 1);
  for (const phrase of phrases) meet(phrase, (word) => (times.get(word) ?? 0) > 1);
  return forms;
};

/** Pages of which much is said first: the tables step to them often, and short steps are sent in less. */
const mostSaidFirst = (
  documents: readonly FindDocument[],
  phrases: readonly SaidPhrase[],
): readonly FindDocument[] => {
  const times = new Map<string, number>();
  for (const { is } of phrases) for (const page of is) times.set(page, (times.get(page) ?? 0) + 1);
  const said = (document: FindDocument): number => times.get(pageName(document)) ?? 0;
  return documents.toSorted((a, b) => said(b) - said(a));
};

const listed = (documents: readonly FindDocument[]): FindIndex['documents'] =>
  documents.map(({ id, kind, title, says = '' }) => ({ id, kind, title, says }));

/** The names of all documents, without a word being learned. */
export const indexNames = (documents: readonly FindDocument[], lay: SearchWords): FindNames => {
  const book = phrasebook(lay);
  return { documents: listed(documents), names: packNames(documents, language(book)), book };
};

/** The index of all documents, and of what people said of them: plain data, same input same bytes. */
export const buildIndex = (
  given: readonly FindDocument[],
  lay: SearchWords,
  phrases: readonly SaidPhrase[] = [],
  table: Kin = { kin: {} },
): FindIndex => {
  const book = phrasebook(lay);
  const say = language(book);
  const documents = mostSaidFirst(given, phrases);
  const rowOf = new Map(documents.map((document, row) => [pageName(document), row]));
  const said: string[][] = documents.map(() => []);
  for (const { say: text, is } of phrases) {
    const row = rowOf.get(is[0] ?? '');
    if (row !== undefined) said[row]?.push(text);
  }
  const forms = formsOf(documents, said, say);
  const perDocument = documents.map((document, row) => weights(document, said[row] ?? [], say));
  const lengths = perDocument.map((stems) => [...stems.values()].reduce((sum, weight) => sum + weight, 0));
  const usual = lengths.reduce((sum, length) => sum + length, 0) / Math.max(1, lengths.length);
  const postings = new Map<string, number[]>();
  perDocument.forEach((stems, row) => {
    const long = 1 - LENGTH_COUNTS + (LENGTH_COUNTS * (lengths[row] ?? 0)) / (usual || 1);
    for (const [stem, weight] of stems) {
      const filled = (weight * (FILLING + 1)) / (weight + FILLING * long);
      const posting = postings.get(stem) ?? [];
      posting.push(row, Math.max(1, Math.round(filled * POSTING_UNIT)));
      postings.set(stem, posting);
    }
  });
  const stems = [...forms.keys()].sort();
  const kin = kinOf(table, say);
  const learned = learn(
    examplesOf(documents, phrases, rowOf, say, kin),
    documents.length + 1,
    priorOf(documents, phrases, rowOf),
  );
  return {
    documents: listed(documents),
    terms: packTerms(
      stems.map((stem) => [stem, ...[...(forms.get(stem) ?? [])].filter((form) => form !== stem).sort()]),
    ),
    postings: packRows(stems.map((stem) => postings.get(stem) ?? [])),
    book,
    names: packNames(documents, say),
    learned: packModel(learned, kin, stems),
  };
};
