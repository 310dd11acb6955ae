import { isKind, type Word } from './words.ts';

/** A noun of a top coat. */
export const isTopNoun = (word: Word | undefined): boolean => isKind(word, 'top-coat');

/** A noun of a top coat, or a word of having laid one. */
export const isTop = (word: Word | undefined): boolean => isKind(word, 'top-coat', 'top-coated');

/** A noun of a top coat, or what its sheen is called: "two of satin". */
export const isTopOrSheen = (word: Word | undefined): boolean => isKind(word, 'top-coat', 'sheen');
