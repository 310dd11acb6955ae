import type { Entry } from '#engine/index.ts';
import { knowledge } from './knowledge.ts';

/** Terms are written in lower case; alone on a line they begin with a capital. */
export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** The terms in the order of a dictionary. */
export const bySpelling = (terms: readonly Entry<'term'>[]): readonly Entry<'term'>[] =>
  [...terms].sort((a, b) => (a.term.toLowerCase() < b.term.toLowerCase() ? -1 : 1));

const plain = (text: string): string => text.toLowerCase().replace(/(e?s|ing)$/, '');

/** The flaw that a word names, if it is one. */
export const flawOf = ({ id, term, also }: Entry<'term'>): Entry<'defect'> | undefined => {
  const words = new Set([id.replaceAll('-', ' '), term, ...also].map(plain));
  const named = (names: readonly string[]) => names.some((name) => words.has(plain(name)));
  return (
    knowledge.defects.find(({ name, id: flaw }) => named([name, flaw.replaceAll('-', ' ')])) ??
    knowledge.defects.find(({ standard }) => named(standard.map((one) => one.term))) ??
    knowledge.defects.find((defect) => named(defect.also))
  );
};
