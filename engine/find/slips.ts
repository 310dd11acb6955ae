const VOWELS = 'aeiouy';

/** A wrong first letter is rare, so it counts more. */
const FIRST = 1.5;

/** Price of typing one letter for another: vowels are confused more readily than consonants. */
const swap = (a: string, b: string): number => {
  if (a === b) return 0;
  return VOWELS.includes(a) && VOWELS.includes(b) ? 0.7 : 1;
};

/** Price of a letter too many or too few: doubling is the commonest slip, then unheard letters. */
const extra = (letter: string, neighbor: string | undefined): number => {
  if (letter === neighbor) return 0.5;
  return letter === 'h' || VOWELS.includes(letter) ? 0.7 : 1;
};

/**
 * How many slips turn `meant` into `typed`: letters left out, put in, replaced, or two neighbors swapped.
 * Whole slips count 1, ready ones (doubled letter, wrong vowel) less. Prices: common practice, no source.
 */
export const slips = (typed: string, meant: string): number => {
  const width = meant.length + 1;
  const cost = new Float32Array((typed.length + 1) * width);
  for (let i = 0; i <= typed.length; i++)
    for (let j = 0; j < width; j++) {
      if (i === 0 && j === 0) continue;
      const a = typed[i - 1] ?? '';
      const b = meant[j - 1] ?? '';
      let best = Number.POSITIVE_INFINITY;
      if (i) best = (cost[(i - 1) * width + j] ?? 0) + extra(a, typed[i - 2]);
      if (j) best = Math.min(best, (cost[i * width + j - 1] ?? 0) + extra(b, meant[j - 2]));
      if (i && j)
        best = Math.min(best, (cost[(i - 1) * width + j - 1] ?? 0) + swap(a, b) * (i + j === 2 ? FIRST : 1));
      if (i > 1 && j > 1 && a === meant[j - 2] && b === typed[i - 2])
        best = Math.min(best, (cost[(i - 2) * width + j - 2] ?? 0) + 0.8);
      cost[i * width + j] = best;
    }
  return cost[cost.length - 1] ?? 0;
};
