import type { SaidPhrase } from '#engine/find.ts';
import { buildIndex, documentsOf, type FindIndex, type FindNames, indexNames } from '#engine/find.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { Collected, Imagined, SaidOfPages } from '#engine/model/said.ts';
import { type ContentRoot, textOf } from './files.ts';
import { readSearchWords } from './hear.ts';
import { keptIndex } from './kept-index.ts';
import { readKin } from './kin.ts';
import { ELSEWHERE, mentionOf } from './mention.ts';
import { type Mention, orThrow, readTable, type Table } from './table.ts';

const PAGES = 'content/hear/pages.yaml';
const IMAGINED = 'content/hear/imagined.yaml';
const COLLECTED = 'content/hear/collected.yaml';

const pagesOf = ({ said }: Imagined): Mention[] =>
  Object.keys(said).flatMap((name) => mentionOf(name, ['said', name]));

export const saidTable = (known: Knowledge, root: ContentRoot): Table<SaidOfPages> =>
  readTable(known, root, PAGES, SaidOfPages, pagesOf);

export const imaginedTable = (known: Knowledge, root: ContentRoot): Table<Imagined> =>
  readTable(known, root, IMAGINED, Imagined, pagesOf);

export const collectedTable = (known: Knowledge, root: ContentRoot): Table<Collected> =>
  readTable(known, root, COLLECTED, Collected, ({ phrases }) =>
    phrases.flatMap(({ is }, at) => is.flatMap((name, i) => mentionOf(name, ['phrases', at, 'is', i]))),
  );

const phrasesOf = ({ said }: Imagined): SaidPhrase[] =>
  Object.entries(said).flatMap(([name, lines]) =>
    lines.map((say) => ({ say, is: name === ELSEWHERE ? [] : [name] })),
  );

/** All that people said: the authors' lines, the imagined ones and the collected ones. Throws every fault as a line. */
export const readSaid = (
  known: Knowledge,
  root: ContentRoot,
): { phrases: SaidPhrase[]; tools: SaidOfPages['tools'] } => {
  if (textOf(root, PAGES) === undefined) return { phrases: [], tools: [] };
  const pages = orThrow(saidTable(known, root));
  const imagined = textOf(root, IMAGINED) !== undefined ? phrasesOf(orThrow(imaginedTable(known, root))) : [];
  const collected =
    textOf(root, COLLECTED) !== undefined
      ? orThrow(collectedTable(known, root)).phrases.map((phrase) => ({ ...phrase, typed: true as const }))
      : [];
  return { phrases: [...phrasesOf(pages), ...imagined, ...collected], tools: pages.tools };
};

/** The names of all pages, as the search knows them; nothing is learned for it. */
export const readNames = (known: Knowledge, root: ContentRoot): FindNames =>
  indexNames(documentsOf(known, readSaid(known, root).tools), readSearchWords(root));

const indexes = new WeakMap<Knowledge, FindIndex>();

/** The index of the search of the content below `root`, learned once for each knowledge read. */
export const readIndex = (known: Knowledge, root: ContentRoot): FindIndex => {
  const made = indexes.get(known);
  if (made) return made;
  const { phrases, tools } = readSaid(known, root);
  const madeOf = [documentsOf(known, tools), readSearchWords(root), phrases, readKin(root)] as const;
  const fresh = keptIndex(madeOf, () => buildIndex(...madeOf));
  indexes.set(known, fresh);
  return fresh;
};
