import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';

/** A twelve-year-old reads this with ease. Flesch–Kincaid grade: Kincaid and others, US Navy report 8-75, 1975. */
export const HIGHEST_GRADE = 7;

/** The US school grade at which `text` reads, trade terms counted as one plain word each. */
export const gradeOf = (text: string, terms: readonly { readonly term: string }[] = []): number => {
  const plain = terms.reduce(
    (out, { term }) => out.replaceAll(new RegExp(`\\b${term}\\b`, 'gi'), 'coat'),
    text,
  );
  const words = plain.match(/[\p{L}\p{N}'’-]+/gu) ?? [];
  const sentences = plain.split(/[.!?;:]+(?:\s|$)/).filter((part) => /\p{L}/u.test(part)).length;
  return fleschKincaid({ sentence: sentences, word: words.length, syllable: syllable(plain) });
};
