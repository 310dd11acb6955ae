const MARKS = /\p{M}/gu;

/** Whether a text is told, in part, in a language that is not heard here: two different words of one, or more. */
export const isOtherTongue = (words: string, text: string): boolean => {
  const known = new Set(words.split(','));
  const plain = text.normalize('NFD').replaceAll(MARKS, '').toLowerCase();
  return new Set((plain.match(/\p{L}+/gu) ?? []).filter((word) => known.has(word))).size >= 2;
};
