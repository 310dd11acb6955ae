import type { Knowledge } from '../knowledge/knowledge.ts';
import type { FindDocument } from './document.ts';

/** The words of an evidence name: `film/lap-marks` is `lap marks`. */
const spoken = (covered: string): string => covered.replace(/^.*\//, '').replaceAll('-', ' ');

/**
 * What a pattern of the ear sounds like when it is said, each of its words in turn: `oily|linseed rags|cloths` is
 * `oily rags` and `linseed cloths`. A `=` asks the ear for the very word and is not said.
 */
const saidOf = (pattern: string): string[] => {
  const places = pattern.split(' ').map((place) => place.split('|').map((word) => word.replace(/^=/, '')));
  const most = Math.max(...places.map((words) => words.length));
  return Array.from({ length: most }, (_, turn) =>
    places.map((words) => words[turn % words.length]).join(' '),
  );
};

/** A page of the site that is a tool and no entry of the knowledge. */
export type ToolPage = {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly also: readonly string[];
};

/**
 * All that can be searched for: flaws, remedies, rules, lessons, products, words and the tools. A flaw is also found by
 * the standard's term and by the names of the flaws it covers, a rule by whatever the ear takes for a call for it.
 */
export const documentsOf = (known: Knowledge, tools: readonly ToolPage[] = []): FindDocument[] => [
  ...known.defects.map(
    (defect): FindDocument => ({
      id: defect.id,
      kind: 'defect',
      title: defect.name,
      also: [...defect.also, ...defect.standard.map(({ term }) => term), ...defect.covers.map(spoken)],
      signs: [defect.looks, defect.shows],
      text: [defect.summary, ...defect.prevent].join(' '),
      says: defect.summary,
    }),
  ),
  ...known.remedies.map(
    (remedy): FindDocument => ({
      id: remedy.id,
      kind: 'remedy',
      title: remedy.name,
      also: [],
      signs: [],
      text: remedy.summary,
      says: remedy.summary,
    }),
  ),
  ...known.rules.map(
    (rule): FindDocument => ({
      id: rule.id,
      kind: 'rule',
      title: rule.title,
      also: rule.also,
      signs: rule.heard.flatMap(saidOf),
      text: `${rule.say} ${rule.why}`,
      says: rule.why,
    }),
  ),
  ...known.lessons.map(
    (lesson): FindDocument => ({
      id: lesson.id,
      kind: 'lesson',
      title: lesson.title,
      also: [],
      signs: [],
      text: lesson.summary,
      says: lesson.summary,
    }),
  ),
  ...known.products.map(
    (product): FindDocument => ({
      id: product.id,
      kind: 'product',
      title: product.name,
      also: product.also,
      signs: [],
      text: product.what,
      says: product.what,
    }),
  ),
  ...known.terms.map(
    (term): FindDocument => ({
      id: term.id,
      kind: 'glossary',
      title: term.term,
      also: term.also,
      signs: [],
      text: term.means,
      says: term.means,
    }),
  ),
  ...tools.map((tool): FindDocument => ({ ...tool, kind: 'page', signs: [], text: tool.says })),
];
