import type { Entry } from '#engine/index.ts';
import type { SOURCE_KINDS } from '#engine/model/source.ts';
import { upper } from '#engine/plain/text.ts';
import { knowledge } from './knowledge.ts';

/** For each kind its name, what it is, and how far it is to be trusted. */
const SHELVES = {
  standard: [
    'Standards',
    'What a body for standards has written down.',
    'Many have gone over it. It holds for the test that it describes.',
  ],
  handbook: [
    'Handbooks',
    'Books and long reports on wood, paint and air.',
    'Edited, and checked by others. The can still wins.',
  ],
  agency: [
    'Agencies',
    'What public bodies say on health, fire, lead and waste.',
    'Where it is stricter than anything else here, follow it.',
  ],
  'data-sheet': [
    'Makers’ data sheets',
    'What the maker of one kind of coating prints; the maker is not named.',
    'Right for that one product. Yours may differ, so go by your own can.',
  ],
  article: [
    'Articles',
    'What finishers and suppliers have written for others.',
    'One writer’s practice: good on causes, weaker on figures.',
  ],
  forum: [
    'Forums',
    'What finishers told each other; the weakest ground.',
    'One person’s word on one piece, checked by nobody: a hint.',
  ],
  library: [
    'Libraries',
    'Programs whose figures were compared with ours.',
    'A check on our arithmetic, not on the finish.',
  ],
} as const satisfies Record<(typeof SOURCE_KINDS)[number], readonly [string, string, string]>;

/** On which shelf a source stands. */
export const shelfOf = ({ kind }: Entry<'source'>) => {
  const [title, says, trust] = SHELVES[kind];
  return { kind, title, says, trust };
};

/** A title as it stands in a list: with a capital and turned quotes, and without the date, which is told apart. */
export const sourceTitle = ({ title }: Entry<'source'>): string => {
  const bare = title
    .replace(/, undated$/, '')
    .replace(/ \(undated\)/, '')
    .replace(/(^|[\s(])'([^']+)'(?=$|[\s,.)])/g, '$1“$2”')
    .replaceAll("'", '’');
  return upper(bare);
};

/** Author and year, where they are known. */
export const sourceFacts = ({ author, edition, year }: Entry<'source'>): string =>
  [author, edition, year === 'undated' ? 'no date' : year].filter(Boolean).join(', ');

const letters = (text: string): string => text.replace(/^[^A-Za-z0-9]+|^(a|an|the) /gi, '').toLowerCase();
const initial = (source: Entry<'source'>): string => upper(letters(sourceTitle(source)).charAt(0));

/** A list of more is cut into pages, so that none is heavy; the first keeps the address of the kind. */
const MOST = 180;

/** The sources by kind, in the order of their titles; a kind without any is left out. */
export const SOURCE_SHELVES = Object.entries(SHELVES)
  .map(([kind, [title, says, trust]]) => ({
    kind,
    title,
    says,
    trust,
    sources: knowledge.sources
      .filter((one) => one.kind === kind)
      .map((source) => ({ source, title: sourceTitle(source) }))
      .sort((a, b) => (letters(a.title) < letters(b.title) ? -1 : 1))
      .map(({ source }) => source),
  }))
  .filter(({ sources }) => sources.length)
  .flatMap((shelf) => {
    const pages = Math.ceil(shelf.sources.length / MOST);
    const each = Math.ceil(shelf.sources.length / pages);
    return Array.from({ length: pages }, (_, at) => {
      const sources = shelf.sources.slice(at * each, (at + 1) * each);
      // What begins with a figure stands before A.
      const from = at && sources[0] ? initial(sources[0]) : 'A';
      const last = sources.at(-1);
      const to = at < pages - 1 && last ? initial(last) : 'Z';
      return {
        ...shelf,
        kind: at ? `${shelf.kind}-${at + 1}` : shelf.kind,
        title: pages > 1 ? `${shelf.title}, ${from} to ${to}` : shelf.title,
        sources,
      };
    });
  });
