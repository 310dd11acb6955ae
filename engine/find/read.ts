import type { Token } from './language.ts';
import type { OpenIndex, Reading } from './open.ts';
import { stem } from './stem.ts';
import { NAMED, POSTING_UNIT, STRANGE, TRUST } from './weights.ts';

/** Rows of the words that begin with `part`. */
const begunBy = ({ words }: OpenIndex, part: string): Set<number> => {
  const rows = new Set<number>();
  for (const [word, row] of words) if (word.startsWith(part)) rows.add(row);
  return rows;
};

const ENDING = 3;

/** Row of the longest term that the word begins with, but for an ending: `blotchiness`, `alligatored`. */
const beginning = ({ term }: OpenIndex, word: string): number | undefined => {
  for (let length = word.length - 1; length >= Math.max(4, word.length - ENDING); length--) {
    const row = term(word.slice(0, length));
    if (row !== undefined) return row;
  }
  return undefined;
};

/** Rows of two known words written as one: `orangepeel`. Pieces under three letters would match by chance. */
const pieces = ({ term }: OpenIndex, word: string): number[] => {
  for (let at = word.length - 3; at >= 3; at--) {
    const head = term(stem(word.slice(0, at)));
    const tail = term(stem(word.slice(at)));
    if (head !== undefined && tail !== undefined) return [head, tail];
  }
  return [];
};

/** How close a typed word must be to one that says nothing to be ignored as a slip of it. */
const SURELY_EMPTY = 0.75;

/** A slip of a word that says nothing; words under five letters are too near to others. */
const isEmptySlip = ({ nearEmpty }: OpenIndex, word: string): boolean =>
  word.length > 4 && (nearEmpty(word, false)[0]?.closeness ?? 0) >= SURELY_EMPTY;

/** Whether any page is called by the term, not only mentions it. */
const isName = ({ postings }: OpenIndex, row: number): boolean =>
  postings[row]?.some((weight, at) => at % 2 === 1 && weight / POSTING_UNIT >= NAMED) ?? false;

/** What one typed word may stand for: itself, its pieces, what it is a slip of, its beginning. */
const readOne = (open: OpenIndex, { word, stem: own }: Token, typing: boolean): Reading => {
  const rows = new Map<number, number>();
  const add = (row: number | undefined, trust: number): void => {
    if (row !== undefined && trust > (rows.get(row) ?? 0)) rows.set(row, trust);
  };
  const itself = open.term(own);
  add(itself, TRUST.itself);
  if (typing && word.length > 1)
    for (const row of begunBy(open, word)) add(row, itself === undefined ? TRUST.started : TRUST.longer);
  if (rows.size === 0) for (const row of pieces(open, word)) add(row, TRUST.pieces);
  if (rows.size > 0) return { rows, asks: [...rows.keys()].some((row) => isName(open, row)) ? 1 : STRANGE };
  // What only the learned table knows is no slip.
  if (open.kin.has(own)) return { rows, asks: 1 };
  if (isEmptySlip(open, word)) return { rows, asks: 0 };
  const corrections = open.nearWords(word, typing);
  for (const { word: meant, closeness } of corrections)
    add(open.words.get(meant), TRUST.corrected * closeness);
  if (rows.size === 0) add(beginning(open, word), TRUST.corrected);
  return { rows, asks: STRANGE - (STRANGE - 1) * (corrections[0]?.closeness ?? 0) };
};

const REMEMBERED = 500;

/** As `readOne`, remembered: a keystroke changes one word only. */
export const read = (open: OpenIndex, token: Token, typing: boolean): Reading => {
  const key = `${token.word}${typing ? '*' : ''}`;
  const known = open.memo.get(key);
  if (known) return known;
  const fresh = readOne(open, token, typing);
  if (open.memo.size >= REMEMBERED) open.memo.clear();
  open.memo.set(key, fresh);
  return fresh;
};
