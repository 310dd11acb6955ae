import type { SOURCE_KINDS } from '#engine/model/source.ts';
import { knowledge } from './knowledge.ts';

const TITLES = {
  standard: 'Standards',
  handbook: 'Handbooks',
  agency: 'Agencies',
  'data-sheet': 'Makers’ data sheets',
  article: 'Articles',
  forum: 'Forums',
  library: 'Libraries',
} as const satisfies Record<(typeof SOURCE_KINDS)[number], string>;

/** The sources by kind; a kind without any is left out. */
export const SOURCE_SHELVES = Object.entries(TITLES)
  .map(([kind, title]) => ({ kind, title, sources: knowledge.sources.filter((one) => one.kind === kind) }))
  .filter(({ sources }) => sources.length);
