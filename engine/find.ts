/** The search: an index made at build time, and one function that page and terminal share. */
export { buildIndex } from './find/build.ts';
export type { FindDocument, FindIndex, FindKind, Hit, LayWords } from './find/document.ts';
export { documentsOf } from './find/documents.ts';
export { type FindOptions, find } from './find/rank.ts';
