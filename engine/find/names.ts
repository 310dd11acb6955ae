import type { FindDocument, PackedNames } from './document.ts';
import type { Language } from './language.ts';
import { pack, packRows, unpack, unpackRows } from './pack.ts';

/** Bits of a mark: of 1,800 names two share one in about one set of ten. */
const BITS = 24;

/** A short mark of a name: FNV-1a (Fowler, Noll and Vo), folded to so many bits as its authors advise. */
const markOf = (name: string): number => {
  let mark = 2166136261;
  for (let at = 0; at < name.length; at++) mark = Math.imul(mark ^ name.charCodeAt(at), 16777619);
  return ((mark >>> BITS) ^ mark) & ((1 << BITS) - 1);
};

/** The mark of a name as it is typed: by its stems, small words left out; undefined where no other is left. */
export const nameMark = (say: Language, typed: string): number | undefined => {
  const stems = say.all(typed).map(({ stem }) => stem);
  return stems.length ? markOf(stems.join(' ')) : undefined;
};

const DIGIT = 512;

/** Marks of every name and other name of the documents, and the rows that bear it. */
export const packNames = (documents: readonly FindDocument[], say: Language): PackedNames => {
  const rows = new Map<number, number[]>();
  documents.forEach(({ title, also }, row) => {
    const called = nameMark(say, title);
    for (const name of new Set([title, ...also].map((one) => nameMark(say, one))))
      if (name !== undefined) rows.set(name, [...(rows.get(name) ?? []), row, name === called ? 1 : 0]);
  });
  const names = [...rows].sort(([a], [b]) => a - b);
  const gaps = names.map(([name], at) => name - (names[at - 1]?.[0] ?? 0));
  return {
    high: pack(gaps.map((gap) => Math.floor(gap / DIGIT))),
    low: pack(gaps.map((gap) => gap % DIGIT)),
    rows: packRows(names.map(([, borne]) => borne)),
  };
};

/** For each mark the rows that bear it; one that bears it as its title is written `~row`. */
export const unpackNames = ({ high, low, rows }: PackedNames): ReadonlyMap<number, readonly number[]> => {
  const digits = unpack(low);
  const borne = unpackRows(rows);
  let mark = 0;
  return new Map(
    unpack(high).map((digit, at) => {
      mark += digit * DIGIT + (digits[at] ?? 0);
      const pairs = borne[at] ?? [];
      return [mark, pairs.flatMap((row, i) => (i % 2 ? [] : [pairs[i + 1] ? ~row : row]))];
    }),
  );
};
