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

/** The folder of each kind below content/. */
export const FOLDERS = {
  defect: 'defects',
  question: 'questions',
  remedy: 'remedies',
  rule: 'rules',
  product: 'products',
  lesson: 'lessons',
  source: 'sources',
  term: 'terms',
  doing: 'doings',
} as const satisfies Record<EntryKind, string>;
