import { MOST_LETTERS } from '../model/card-limits.ts';
import type { JobCard } from '../model/job-card.ts';
import { canonical } from './canonical.ts';

export type CardFields = Omit<JobCard, 'coats' | 'flaws' | 'repairs' | 'photos' | 'removed'>;

/** What one side told and the other left open is kept. A can belongs to its product, so they go together. */
const FILLED = [['product', 'label'], ['sheen'], ['parts'], ['trials'], ['plan'], ['night']] as const;

/**
 * What came later. Of things changed in the same millisecond the text decides, each thing for itself, so that both sides
 * choose alike and a second merge chooses again the same.
 */
export const later = <T>(one: T, two: T, age: number): T =>
  age > 0 || (age === 0 && canonical(one) > canonical(two)) ? one : two;

const linesOf = (notes: string): readonly string[] => notes.split('\n').filter((line) => line.trim());

/** The later notes, and below them what only the other side wrote. Where a card can not hold both, the later ones. */
const bothNotes = (one: string, two: string, age: number): string => {
  const first = later(one, two, age);
  const second = first === one ? two : one;
  const had = new Set(linesOf(first));
  const more = linesOf(second).filter((line) => !had.has(line));
  // Where the other holds all of these, it is what an earlier merge made of both.
  if (age === 0 && linesOf(first).every((line) => linesOf(second).includes(line))) return second;
  const all = more.length ? [first, ...more].filter(Boolean).join('\n') : first;
  return all.length > MOST_LETTERS.notes ? first : all;
};

/**
 * The fields of two versions of one card, `age` being the time from `two` to `one`: those of the newer, filled with what
 * only the other tells, and the notes of both.
 */
export const mergeFields = (one: CardFields, two: CardFields, age: number): CardFields => {
  const first = later(one, two, age);
  const second = first === one ? two : one;
  const filled = FILLED.flatMap((group) =>
    group.some((name) => first[name] !== undefined) ? [] : group.map((name) => [name, second[name]] as const),
  ).filter(([, value]) => value !== undefined);
  return { ...first, ...Object.fromEntries(filled), notes: bothNotes(one.notes, two.notes, age) };
};
