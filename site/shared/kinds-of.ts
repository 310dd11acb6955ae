import { FAMILIES, type Family } from '#engine/model/family.ts';

/** The kinds of top coat that show a flaw, as a page writes them; nothing of one that all kinds show. */
export const kindsOf = (families: readonly Family[]): string | undefined =>
  families.length < FAMILIES.length ? families.join(' ') : undefined;
