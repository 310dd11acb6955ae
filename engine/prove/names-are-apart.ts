import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import type { EntryKind } from '../model/kinds.ts';

/** Words of an id that tell two things apart only by their place. */
const SMALL = new Set('a an and the of in on off out it is to by for from at with then again up'.split(' '));

/** The words of an id in no order, without small words and endings. */
const gist = (id: string): string =>
  id
    .split('-')
    .filter((word) => !SMALL.has(word))
    .map((word) => word.replace(/(ing|ed|es|s)$/, ''))
    .sort()
    .join(' ');

type Named = { readonly id: string; readonly file: string };
const titleOf = (entry: Named & { name?: string; ask?: string; title?: string; term?: string }): string =>
  entry.name ?? entry.ask ?? entry.title ?? entry.term ?? entry.id;

/**
 * No two pages of a kind have the same words in their ids, or the same name. Which of them is new, is not known here.
 */
export function* namesAreApart(known: Knowledge): Generator<Issue> {
  const lists: readonly [EntryKind, readonly (Named & { name?: string; ask?: string })[]][] = [
    ['defect', known.defects],
    ['remedy', known.remedies],
    ['question', known.questions],
    ['rule', known.rules],
    ['term', known.terms],
    ['lesson', known.lessons],
  ];
  for (const [kind, entries] of lists) {
    const seen = new Map<string, (typeof entries)[number]>();
    for (const entry of entries) {
      const { id, file, name, ask } = entry;
      for (const key of [
        `id ${gist(id)}`,
        ...[name, ask].flatMap((said) => (said ? [said.toLowerCase()] : [])),
      ]) {
        const other = seen.get(key);
        if (other !== undefined && other.id !== id)
          yield {
            file,
            line: 1,
            code: 'near-name',
            kind,
            id,
            name: titleOf(entry),
            other: { id: other.id, name: titleOf(other) },
            isNew: false,
          };
        seen.set(key, entry);
      }
    }
  }
}
