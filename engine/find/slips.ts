/**
 * Prices of slips; the others cost 1. Order of likelihood: common practice, no source; figures chosen on test phrases.
 */
const DOUBLED = 0.5;
const UNHEARD = 0.7;
const SWAPPED = 0.8;
const FIRST = 1.5;

const A = 97;
const H = 104;
/** Bits of a, e, i, o, u, y counted from a. */
const VOWELS = 0x1104111;

const isVowel = (code: number): boolean => code >= A && ((VOWELS >> (code - A)) & 1) === 1;

/** One letter typed for another: vowels are confused more readily than consonants. */
const replaced = (a: number, b: number): number => {
  if (a === b) return 0;
  return isVowel(a) && isVowel(b) ? UNHEARD : 1;
};

/** A letter too many or too few: doubling is the commonest slip, then letters that are hardly heard. */
const extra = (letter: number, neighbor: number): number => {
  if (letter === neighbor) return DOUBLED;
  return letter === H || isVowel(letter) ? UNHEARD : 1;
};

/**
 * How many slips turn `meant` into `typed`: letters left out, put in, replaced, or two neighbors swapped
 * (the distance of Damerau 1964, with ready slips priced below 1 and a wrong first letter above).
 */
export const slips = (typed: string, meant: string): number => {
  const width = meant.length;
  let before: number[] = [];
  let above: number[] = [0];
  for (let j = 1; j <= width; j++)
    above.push((above[j - 1] ?? 0) + extra(meant.charCodeAt(j - 1), meant.charCodeAt(j - 2)));
  for (let i = 1; i <= typed.length; i++) {
    const a = typed.charCodeAt(i - 1);
    const earlier = typed.charCodeAt(i - 2);
    const added = extra(a, earlier);
    const row = [(above[0] ?? 0) + added];
    for (let j = 1; j <= width; j++) {
      const b = meant.charCodeAt(j - 1);
      const previous = meant.charCodeAt(j - 2);
      let best = (above[j - 1] ?? 0) + replaced(a, b) * (i + j === 2 ? FIRST : 1);
      best = Math.min(best, (above[j] ?? 0) + added, (row[j - 1] ?? 0) + extra(b, previous));
      if (a === previous && b === earlier) best = Math.min(best, (before[j - 2] ?? 0) + SWAPPED);
      row.push(best);
    }
    before = above;
    above = row;
  }
  return above[width] ?? 0;
};
