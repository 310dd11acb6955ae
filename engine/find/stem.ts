import { stemmer } from 'stemmer';

/**
 * The part of a word that its forms share: `bubbles`, `bubbling` and `bubbly` give one stem.
 * Porter's stem (Porter 1980), then the endings that lay adjectives put on a noun (milk, milky; haze, hazy; fog, foggy)
 * and adverbs on those (easy, easily). A stem under half the word (`witness`, `wit`) is not trusted.
 */
export const stem = (word: string): string => {
  let part = stemmer(word);
  if (part.length * 2 < word.length) part = word;
  if (part.length > 2 && part.endsWith('y')) part = `${part.slice(0, -1)}i`;
  part = part.replace(/ili$/, 'i');
  if (part.length > 3 && /[ie]$/.test(part)) part = part.slice(0, -1);
  if (part.length > 3 && part.at(-1) === part.at(-2)) part = part.slice(0, -1);
  return part;
};
