import type { Entry } from '#engine/index.ts';
import type { SOURCE_KINDS } from '#engine/model/source.ts';
import { knowledge } from './knowledge.ts';

const SHELVES = {
  standard: ['Standards', 'What a body for standards has written down.'],
  handbook: ['Handbooks', 'Books and long reports on wood, paint and air.'],
  agency: ['Agencies', 'What public bodies say on health, fire, lead and waste.'],
  'data-sheet': [
    'Makers’ data sheets',
    'What the maker of one kind of coating prints; the maker is not named.',
  ],
  article: ['Articles', 'What finishers and suppliers have written for others.'],
  forum: ['Forums', 'What finishers told each other; the weakest ground.'],
  library: ['Libraries', 'Programs whose figures were compared with ours.'],
} as const satisfies Record<(typeof SOURCE_KINDS)[number], readonly [string, string]>;

/** A title as it stands in a list: with a capital and turned quotes, and without the date, which is told apart. */
export const sourceTitle = ({ title }: Entry<'source'>): string => {
  const bare = title
    .replace(/, undated$/, '')
    .replace(/ \(undated\)/, '')
    .replace(/(^|[\s(])'([^']+)'(?=$|[\s,.)])/g, '$1“$2”')
    .replaceAll("'", '’');
  return bare.charAt(0).toUpperCase() + bare.slice(1);
};

/** Author and year, where they are known. */
export const sourceFacts = ({ author, edition, year }: Entry<'source'>): string =>
  [author, edition, year === 'undated' ? 'no date' : year].filter(Boolean).join(', ');

const letters = (text: string): string => text.replace(/^[^A-Za-z0-9]+|^(a|an|the) /gi, '').toLowerCase();

/** The sources by kind, in the order of their titles; a kind without any is left out. */
export const SOURCE_SHELVES = Object.entries(SHELVES)
  .map(([kind, [title, says]]) => ({
    kind,
    title,
    says,
    sources: knowledge.sources
      .filter((one) => one.kind === kind)
      .map((source) => ({ source, title: sourceTitle(source) }))
      .sort((a, b) => (letters(a.title) < letters(b.title) ? -1 : 1))
      .map(({ source }) => source),
  }))
  .filter(({ sources }) => sources.length);
