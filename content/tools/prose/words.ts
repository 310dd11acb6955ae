/** Words of a text: their spelling, those that this site has another word for, and those that speak past the reader. */

const WORD = /[A-Za-z\u00c0-\u024f]+(?:['’][A-Za-z]+)*/g;

/** Every word of a text once. */
export const wordsIn = (text: string): ReadonlySet<string> => new Set(text.match(WORD));

/** "it's" is looked up whole, "Flexner's" without its ending. */
export const bareWord = (word: string): string => word.replaceAll('’', "'").replace(/'s$/, '');

/** Where a word or a few stand in a text, as whole words. */
export const placesOf = (
  text: string,
  words: string,
  flags: 'gu' | 'giu' = 'gu',
): readonly { readonly at: number; readonly word: string }[] =>
  [...text.matchAll(new RegExp(`(?<![\\p{L}\\d-])${words}(?![\\p{L}\\d-])`, flags))].map(
    ({ 0: word, index }) => ({
      word,
      at: index,
    }),
  );

/** Where a word stands, alone or as a part of one with hyphens: "rub-out" has two. */
export const partsOf = (
  text: string,
  word: string,
): readonly { readonly at: number; readonly word: string }[] =>
  [...text.matchAll(new RegExp(`(?<![\\p{L}\\d])${word}(?![\\p{L}\\d])`, 'gu'))].map(({ index }) => ({
    word,
    at: index,
  }));

/** Words that may stand twice: "what it had had", "so that that stays". */
const TWICE = /(?<![\p{L}\d-])(?!(?:had|that)\b)(\p{L}+) \1(?![\p{L}\d-])/gu;
export const twiceIn = (text: string): readonly { readonly at: number; readonly word: string }[] =>
  [...text.matchAll(TWICE)].map(({ 1: word = '', index }) => ({ word, at: index }));

/** The reader is "you", and nobody here says "I". */
const PAST_THE_READER = 'she her hers herself he him his himself I my mine me myself'.split(' ');
const NAMED = ['the user', 'the reader', 'the customer'];
const upper = (word: string): string => word.replace(/^./, (first) => first.toUpperCase());

/** What speaks of the reader instead of to her, as it is written. */
export const pastTheReader = (text: string, words: ReadonlySet<string>): readonly string[] => [
  ...new Set([
    ...PAST_THE_READER.flatMap((word) => [word, upper(word)]).filter((word) => words.has(word)),
    ...NAMED.flatMap((name) => [name, upper(name)]).filter((name) => text.includes(name)),
  ]),
];
