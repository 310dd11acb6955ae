/** What an author is told of a value: what stands there, as the first half of a sentence, and what to write. */
export type Wants = { readonly what: string; readonly wants: string };

/** A text as it may be quoted in a sentence. */
export const short = (text: string): string => (text.length > 90 ? `${text.slice(0, 88)}…` : text);

/** A sentence as it stands within another one. */
export const asClause = (sentence: string): string =>
  sentence.replace(/^[A-Z](?=[a-z ])/, (first) => first.toLowerCase()).replace(/\.$/, '');

/** What stands there, by what was read. */
export const found = (value: unknown): string => {
  if (value === null || value === undefined) return 'nothing stands';
  if (Array.isArray(value)) return 'a list stands';
  if (typeof value === 'object') return 'fields of their own stand';
  return `"${short(String(value))}" cannot stand`;
};
