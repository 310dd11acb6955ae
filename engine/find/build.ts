import type { FindDocument, FindIndex, LayWords } from './document.ts';
import { type Language, language, phrasebook } from './language.ts';
import { FIELD } from './weights.ts';

/** How often each stem stands in a list of phrases, once a phrase. */
const counts = (phrases: readonly string[], { tokens }: Language): Map<string, number> => {
  const found = new Map<string, number>();
  for (const phrase of phrases)
    for (const stem of new Set(tokens(phrase).map((token) => token.stem)))
      found.set(stem, (found.get(stem) ?? 0) + 1);
  return found;
};

/** Weight of each stem in one document. More mentions add up to half as much again; a short name says more. */
const weights = (document: FindDocument, say: Language): Map<string, number> => {
  const fields = {
    title: [document.title],
    also: document.also,
    signs: document.signs,
    text: [document.text],
  };
  const found = new Map<string, number>();
  for (const [field, phrases] of Object.entries(fields)) {
    const stems = counts(phrases, say);
    for (const [stem, times] of stems) {
      const fullness = field === 'title' ? 0.7 + 0.3 / stems.size : (1.5 * times) / (times + 0.5);
      found.set(stem, (found.get(stem) ?? 0) + FIELD[field as keyof typeof FIELD] * fullness);
    }
  }
  return found;
};

/** The index of all documents: plain data, same input same bytes. */
export const buildIndex = (documents: readonly FindDocument[], lay: LayWords): FindIndex => {
  const book = phrasebook(lay);
  const say = language(book);
  const forms = new Map<string, Set<string>>();
  const postings = new Map<string, number[]>();
  documents.forEach((document, at) => {
    const { title, also, signs, text } = document;
    for (const phrase of [title, ...also, ...signs, text])
      for (const { word, stem } of say.tokens(phrase))
        forms.set(stem, (forms.get(stem) ?? new Set()).add(word));
    for (const [stem, weight] of weights(document, say)) {
      const posting = postings.get(stem) ?? [];
      posting.push(at, Math.round(weight * 10));
      postings.set(stem, posting);
    }
  });
  const stems = [...forms.keys()].sort();
  return {
    documents: documents.map(({ id, kind, title }) => ({ id, kind, title })),
    terms: stems
      .map((stem) => [...new Set([stem, ...[...(forms.get(stem) ?? [])].sort()])].join(' '))
      .join(','),
    postings: stems.map((stem) => postings.get(stem) ?? []),
    book,
  };
};
