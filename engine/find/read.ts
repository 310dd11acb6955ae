import type { Token } from './language.ts';
import type { OpenIndex, Reading } from './open.ts';
import { stem } from './stem.ts';
import { TRUST } from './weights.ts';

/** Position of the first word that is not before `part`; the words are sorted. */
const firstFrom = (words: readonly string[], part: string): number => {
  let low = 0;
  let high = words.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((words[middle] ?? '') < part) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** Rows of the words that begin with `part`. */
const begunBy = ({ words, index }: OpenIndex, part: string): number[] => {
  const rows: number[] = [];
  for (let at = firstFrom(words, part); words[at]?.startsWith(part); at++) rows.push(index.termOf[at] ?? -1);
  return rows;
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

/** What one typed word may stand for. */
const readOne = (open: OpenIndex, { word, stem: own }: Token, typing: boolean): Reading => {
  const rows = new Map<number, number>();
  const add = (row: number | undefined, trust: number): void => {
    if (row !== undefined && trust > (rows.get(row) ?? 0)) rows.set(row, trust);
  };
  const addMeanings = (part: string, trust: number): void => {
    for (const meant of open.say.meanings(part)) add(open.term(meant), trust * TRUST.meant);
  };
  const itself = open.term(own);
  add(itself, TRUST.itself);
  addMeanings(own, 1);
  if (typing && word.length > 1)
    for (const row of begunBy(open, word)) add(row, itself === undefined ? TRUST.started : TRUST.meant);
  if (rows.size > 0) return { rows, counts: true };
  for (const row of pieces(open, word)) add(row, TRUST.pieces);
  if (rows.size > 0) return { rows, counts: true };
  const corrections = open.correct(word, typing);
  const [nearest] = corrections;
  if (nearest && nearest.slips < 1 && open.say.empty.has(nearest.word)) return { rows, counts: false };
  for (const { word: meant, closeness } of corrections) {
    const part = stem(meant);
    add(open.term(part), TRUST.corrected * closeness);
    addMeanings(part, TRUST.corrected * closeness);
  }
  return { rows, counts: true };
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
