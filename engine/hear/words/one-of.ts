/** Words of a list, asked for as a pattern is. */
export type OneOf = { readonly test: (word: string) => boolean };

/** `coats?` is `coat` and `coats`. */
const spelled = (word: string): readonly string[] =>
  word.includes('?') ? [word.replace(/.\?/, ''), word.replace('?', '')].flatMap(spelled) : [word];

/**
 * Whole words, as the pattern `^(list)$` tells them: "coats?|layers?". A post asks thousands of times for such words,
 * and a set answers many times faster than a pattern does; it is made when it is first asked.
 */
export const oneOf = (list: string): OneOf => {
  let words: ReadonlySet<string> | undefined;
  return {
    test: (word) => {
      words ??= new Set(list.split('|').flatMap(spelled));
      return words.has(word);
    },
  };
};
