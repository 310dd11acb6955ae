/**
 * Words for knowledge that nobody wrote. A language grows slower than its texts, about as the root of their length
 * (Heaps' law), so a copy takes most of its words from those before it, and some that no other has.
 */

/** Shorter words hold a language together and stay. */
const LONG = /[a-z]{5,}/g;
/** Two letters in place of the last two: a text stays as long as it was. */
const ENDS = 'bcdfglmnprst';
const VOWELS = 'aeiou';

const numberOf = (text: string): number =>
  [...text].reduce((sum, sign) => (Math.imul(sum, 31) + sign.charCodeAt(0)) >>> 0, 7);

/** A text in the words of a copy, 1 the first; the same at each run. */
export const wordsOfCopy = (text: string, copy: number): string =>
  text.replace(LONG, (word) => {
    const variants = Math.ceil(Math.sqrt(copy));
    const variant = numberOf(`${word} ${copy}`) % variants;
    if (!variant) return word;
    const end = ENDS[variant % ENDS.length] ?? '';
    const vowel = VOWELS[Math.floor(variant / ENDS.length) % VOWELS.length] ?? '';
    return `${word.slice(0, -2)}${vowel}${end}`;
  });
