/** The search: an index made at build time, and one function that page and terminal share. */
export { buildIndex, indexNames } from './find/build.ts';
export {
  type FindDocument,
  type FindIndex,
  type FindKind,
  type FindNames,
  type Hit,
  pageName,
  type SaidPhrase,
} from './find/document.ts';
export { documentsOf, type ToolPage } from './find/documents.ts';
export { type FindOptions, find, isNamedInSight } from './find/rank.ts';
export { stem } from './find/stem.ts';
export type { SearchWords } from './model/search-words.ts';
