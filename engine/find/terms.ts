/** A term: its stem, and the other forms of it that the documents use. */
export type Term = readonly [stem: string, ...forms: string[]];

const ZERO = 65;
/** A count is one sign of the capitals; no word is written in them. */
const MOST = 25;
const sign = (count: number): string => String.fromCharCode(ZERO + count);
const countOf = (part: string): number => part.charCodeAt(0) - ZERO;

/** How many letters two words begin with alike. */
const alike = (one: string, other: string): number => {
  let count = 0;
  while (count < one.length && one[count] === other[count]) count++;
  return count;
};

/**
 * Terms in rising order as text. A stem is written as how many letters it shares with the one before, and the rest; a
 * form as how many letters of its stem are cut off, and its ending: compressed that takes little more than half of what
 * whole words take. Forms come back in the order they were given in.
 */
export const packTerms = (terms: readonly Term[]): string =>
  terms
    .map(([stem, ...forms], at) => {
      const shared = Math.min(MOST, alike(terms[at - 1]?.[0] ?? '', stem));
      const endings = forms.map((form) => {
        const kept = alike(stem, form);
        if (stem.length - kept > MOST) throw new RangeError(`"${form}" is no form of "${stem}"`);
        return sign(stem.length - kept) + form.slice(kept);
      });
      return [sign(shared) + stem.slice(shared), ...endings].join(' ');
    })
    .join(',');

/** What `packTerms` has packed. */
export const unpackTerms = (text: string): Term[] => {
  let stem = '';
  return text.split(',').map((term): Term => {
    const [own = '', ...endings] = term.split(' ');
    stem = stem.slice(0, countOf(own)) + own.slice(1);
    const forms = endings.map((ending) => stem.slice(0, stem.length - countOf(ending)) + ending.slice(1));
    return [stem, ...forms];
  });
};
