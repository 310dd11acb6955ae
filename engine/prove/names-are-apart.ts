import type { Issue } from '../issue.ts';
import type { Knowledge } from '../knowledge.ts';
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

/** No two pages of a kind have the same words in their ids, or the same name. */
export function* namesAreApart(known: Knowledge): Generator<Issue> {
  const lists: readonly [EntryKind, readonly { id: string; file: string; name?: string; ask?: string }[]][] =
    [
      ['defect', known.defects],
      ['remedy', known.remedies],
      ['question', known.questions],
      ['rule', known.rules],
      ['term', known.terms],
      ['lesson', known.lessons],
    ];
  for (const [kind, entries] of lists) {
    const seen = new Map<string, string>();
    for (const { id, file, name, ask } of entries)
      for (const key of [
        `id ${gist(id)}`,
        ...[name, ask].flatMap((said) => (said ? [said.toLowerCase()] : [])),
      ]) {
        const other = seen.get(key);
        if (other !== undefined && other !== id) yield { file, line: 1, code: 'near-name', kind, id, other };
        seen.set(key, id);
      }
  }
}
