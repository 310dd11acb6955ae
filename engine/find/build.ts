import { keysOf } from '../entry-of.ts';
import { type FindDocument, type FindIndex, type LayWords, pageName, type SaidPhrase } from './document.ts';
import { type Language, language, phrasebook } from './language.ts';
import { type Example, featuresOf, learn } from './learn.ts';
import { nameMarks } from './names.ts';
import { FIELD, FILLING, LENGTH_COUNTS } from './weights.ts';

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

/** Texts of a page's own: trusted less than what somebody typed of whom the answer is known. */
const OWN = { title: 0.6, also: 0.6, signs: 0.6, text: 0.4 } as const;

const examplesOf = (
  documents: readonly FindDocument[],
  phrases: readonly SaidPhrase[],
  rowOf: ReadonlyMap<string, number>,
  say: Language,
): Example[] => {
  const example = (text: string, right: readonly number[], weight: number): Example => ({
    features: featuresOf(say.all(text).map(({ stem }) => stem)),
    right,
    weight,
  });
  const elsewhere = documents.length;
  return [
    ...documents.flatMap((document, row) => [
      example(document.title, [row], OWN.title),
      ...document.also.map((phrase) => example(phrase, [row], OWN.also)),
      ...document.signs.map((phrase) => example(phrase, [row], OWN.signs)),
      example(document.text, [row], OWN.text),
    ]),
    ...phrases.map(({ say: text, is }) =>
      example(text, is.length ? is.flatMap((page) => rowOf.get(page) ?? []) : [elsewhere], 1),
    ),
  ];
};

/** Words met in any field of a document, with their stems. */
const formsOf = (
  documents: readonly FindDocument[],
  said: readonly (readonly string[])[],
  say: Language,
): Map<string, Set<string>> => {
  const forms = new Map<string, Set<string>>();
  documents.forEach(({ title, also, signs, text }, row) => {
    for (const phrase of [title, ...also, ...signs, text, ...(said[row] ?? [])])
      for (const { word, stem } of say.tokens(phrase))
        forms.set(stem, (forms.get(stem) ?? new Set()).add(word));
  });
  return forms;
};

/** The index of all documents, and of what people said of them: plain data, same input same bytes. */
export const buildIndex = (
  documents: readonly FindDocument[],
  lay: LayWords,
  phrases: readonly SaidPhrase[] = [],
): FindIndex => {
  const book = phrasebook(lay);
  const say = language(book);
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
      posting.push(row, Math.max(1, Math.round(filled * 10)));
      postings.set(stem, posting);
    }
  });
  const stems = [...forms.keys()].sort();
  return {
    documents: documents.map(({ id, kind, title, says = '' }) => ({ id, kind, title, says })),
    terms: stems
      .map((stem) => [...new Set([stem, ...[...(forms.get(stem) ?? [])].sort()])].join(' '))
      .join(','),
    postings: stems.map((stem) => postings.get(stem) ?? []),
    book,
    names: nameMarks(documents, say),
    learned: learn(examplesOf(documents, phrases, rowOf, say), documents.length + 1),
  };
};
