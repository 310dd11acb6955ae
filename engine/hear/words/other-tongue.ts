const MARKS = /\p{M}/gu;
/** Where every letter is of the plain alphabet none wears a mark. */
const PLAIN = /^[\0-\x7f]*$/;

let last: { readonly words: string; readonly known: ReadonlySet<string> } | undefined;

/** The words of a lexicon, taken apart once: one lexicon hears all. */
const knownOf = (words: string): ReadonlySet<string> => {
  if (last?.words !== words) last = { words, known: new Set(words.split(',')) };
  return last.known;
};

/** Whether a text is told, in part, in a language that is not heard here: two different words of one, or more. */
export const isOtherTongue = (words: string, text: string): boolean => {
  const known = knownOf(words);
  const plain = (PLAIN.test(text) ? text : text.normalize('NFD').replaceAll(MARKS, '')).toLowerCase();
  return new Set((plain.match(/\p{L}+/gu) ?? []).filter((word) => known.has(word))).size >= 2;
};
