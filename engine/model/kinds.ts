/** The kinds of content: one folder, one schema each. */
export const ENTRY_KINDS = [
  'defect',
  'question',
  'remedy',
  'rule',
  'product',
  'lesson',
  'source',
  'term',
  'doing',
] as const;
export type EntryKind = (typeof ENTRY_KINDS)[number];
