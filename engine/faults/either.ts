/** `a, b or c`. */
export const either = (words: readonly string[]): string =>
  [words.slice(0, -1).join(', '), words.at(-1)].filter(Boolean).join(' or ');
