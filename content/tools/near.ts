import { buildIndex, type FindDocument, find } from '#engine/find.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import type { EntryKind } from '#engine/model/kinds.ts';
import { nearest, wordsOf } from '#engine/plain/nearest.ts';
import type { ContentRoot } from './files.ts';
import { readSearchWords } from './hear.ts';
import { readIndex } from './said.ts';

/** A page that is there already and may be what an author is about to write. */
export type Near = { readonly id: string; readonly title: string; readonly says: string };

/** Listed at most. */
const LISTED = 5;
/** What `npm run find` lists at most. */
export const FOUND = 8;

/** What an entry says of itself, whatever its kind calls it. */
type Titled = { readonly id: string; readonly title: string; readonly says: string };
const titled = (known: Knowledge, kind: EntryKind): readonly Titled[] => {
  switch (kind) {
    case 'defect':
    case 'remedy':
      return known[kind === 'defect' ? 'defects' : 'remedies'].map(({ id, name, summary }) => ({
        id,
        title: name,
        says: summary,
      }));
    case 'question':
      return known.questions.map(({ id, ask, how }) => ({ id, title: ask, says: how }));
    case 'rule':
      return known.rules.map(({ id, title, say }) => ({ id, title, says: say }));
    case 'term':
      return known.terms.map(({ id, term, means }) => ({ id, title: term, says: means }));
    case 'source':
      return known.sources.map(({ id, title, kind: of }) => ({ id, title, says: of }));
    default:
      return [];
  }
};

/** Entries of one kind as documents of a search of their own: the site's search has no questions and no sources. */
const searched = (all: readonly Titled[], root: ContentRoot, words: string): readonly string[] => {
  const documents = all.map(
    ({ id, title, says }): FindDocument => ({
      id,
      kind: 'page',
      title: `${title} ${id.replaceAll('-', ' ')}`,
      also: [],
      signs: [],
      text: says,
    }),
  );
  const index = buildIndex(documents, readSearchWords(root), []);
  return find(index, words, { limit: LISTED }).flatMap(({ id, perhaps }) => (perhaps ? [] : [id]));
};

/** Shares at least two words, or all that the shorter one has. */
const shares = (one: ReadonlySet<string>, other: ReadonlySet<string>): boolean => {
  const common = [...one].filter((word) => other.has(word)).length;
  return common >= 2 || (common > 0 && common === Math.min(one.size, other.size));
};

/** The flaws that `npm run find` lists for each of the texts, the first of each first. */
const found = (known: Knowledge, root: ContentRoot, texts: readonly string[]): readonly string[] => {
  const index = readIndex(known, root);
  const lists = texts.map((text) =>
    find(index, text, { limit: FOUND }).flatMap(({ kind, id }) => (kind === 'defect' ? [id] : [])),
  );
  return Array.from({ length: FOUND }, (_, at) => lists.flatMap((list) => list[at] ?? [])).flat();
};

/**
 * What is named or worded like `id` and `words` (a name and a sentence; empty where nothing is told yet), nearest names
 * first. `root` is where the lay words and the search of the site are read from.
 */
export const nearOf = (
  known: Knowledge,
  root: ContentRoot,
  kind: EntryKind,
  id: string,
  words: readonly string[] = [],
): readonly Near[] => {
  const all = titled(known, kind);
  const spelled = nearest(
    id,
    all.map((one) => one.id),
  );
  const own = wordsOf(id);
  const named = all.filter((one) => one.id === spelled || shares(own, wordsOf(one.id))).map((one) => one.id);
  const asked = words.length ? words : [id.replaceAll('-', ' ')];
  const worded = kind === 'defect' ? found(known, root, asked) : searched(all, root, asked.join('. '));
  const ids = [...new Set([...(words.length ? worded : named), ...(words.length ? named : worded)])].slice(
    0,
    kind === 'defect' ? 2 * FOUND : LISTED,
  );
  return ids.flatMap((one) => all.find((entry) => entry.id === one) ?? []);
};
