import type { FindDocument } from './document.ts';
import type { Language } from './language.ts';

/** A short mark of a name: FNV-1a (Fowler, Noll and Vo), 32 bits. Two names in 60,000 share one. */
const markOf = (name: string): number => {
  let mark = 2166136261;
  for (let at = 0; at < name.length; at++) mark = Math.imul(mark ^ name.charCodeAt(at), 16777619);
  return mark >>> 0;
};

/** The mark of a name as it is typed: by its stems, small words left out. */
export const nameMark = (say: Language, typed: string): string => {
  const stems = say.all(typed).map(({ stem }) => stem);
  return stems.length ? markOf(stems.join(' ')).toString(36) : '';
};

/** Marks of every name and other name, and the rows that bear it; a row that bears it as its title is written `~row`. */
export const nameMarks = (documents: readonly FindDocument[], say: Language): Record<string, number[]> => {
  const rows = new Map<string, number[]>();
  documents.forEach(({ title, also }, row) => {
    const called = nameMark(say, title);
    for (const name of new Set([title, ...also].map((one) => nameMark(say, one))))
      if (name) rows.set(name, [...(rows.get(name) ?? []), name === called ? ~row : row]);
  });
  return Object.fromEntries([...rows].sort(([a], [b]) => (a < b ? -1 : 1)));
};
