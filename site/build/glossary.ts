import type { Entry } from '#engine/index.ts';

/** Terms are written in lower case; alone on a line they begin with a capital. */
export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** The terms in the order of a dictionary. */
export const bySpelling = (terms: readonly Entry<'term'>[]): readonly Entry<'term'>[] =>
  [...terms].sort((a, b) => (a.term.toLowerCase() < b.term.toLowerCase() ? -1 : 1));
