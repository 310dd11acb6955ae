import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { Sights } from '#engine/model/sights.ts';
import type { ContentRoot } from './files.ts';
import { type Mention, orThrow, readTable, type Table } from './table.ts';

const mentionsOf = ({ groups }: Sights): Mention[] =>
  groups.flatMap(({ signs, last, face, also }, at) => {
    const list = (kind: Mention['kind'], ids: readonly string[], field: string): Mention[] =>
      ids.map((id, i) => ({ kind, id, path: ['groups', at, field, i] }));
    return [
      ...list('question', signs, 'signs'),
      ...list('question', last, 'last'),
      ...list('defect', also, 'also'),
      ...(face ? [{ kind: 'defect', id: face, path: ['groups', at, 'face'] } as const] : []),
    ];
  });

/** The groups of the first page, or every fault in them. */
export const sightsTable = (known: Knowledge, root: ContentRoot): Table<Sights> =>
  readTable(known, root, 'content/sights.yaml', Sights, mentionsOf);

/** The groups of the first page; throws every fault as a line `file:line: what; what to do`. */
export const readSights = (known: Knowledge, root: ContentRoot): Sights => orThrow(sightsTable(known, root));
