import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { buildIndex, type FindDocument } from '#engine/find.ts';
import { Words } from '#engine/model/words.ts';
import { knowledge } from './knowledge.ts';

/** What the search can find: flaws, repairs and words of the trade. */
const documents = (): FindDocument[] => [
  ...knowledge.defects.map(({ id, name, also, standard, looks, summary, shows }) => ({
    id,
    kind: 'defect' as const,
    title: name,
    also: [...also, ...standard.map(({ term }) => term)],
    signs: [looks],
    text: `${summary} ${shows}`,
  })),
  ...knowledge.remedies.map(({ id, name, summary }) => ({
    id,
    kind: 'remedy' as const,
    title: name,
    also: [],
    signs: [],
    text: summary,
  })),
  ...knowledge.terms.map(({ id, term, also, means }) => ({
    id,
    kind: 'glossary' as const,
    title: term,
    also,
    signs: [],
    text: means,
  })),
];

export const findIndex = () =>
  buildIndex(documents(), Words.parse(parse(readFileSync('content/words.yaml', 'utf8'))));
