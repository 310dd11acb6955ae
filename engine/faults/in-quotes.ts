/** A text between quotes, as YAML reads it back: single ones where it holds double ones or a backslash. */
export const inQuotes = (text: string): string =>
  /["\\]/.test(text) ? `'${text.replaceAll("'", "''")}'` : `"${text}"`;
