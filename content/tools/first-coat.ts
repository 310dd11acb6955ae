import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { FirstCoat } from '#engine/model/first-coat.ts';
import type { ContentRoot } from './files.ts';
import { type Mention, orThrow, readTable, type Table } from './table.ts';

const mentionsOf = ({ steps }: FirstCoat): Mention[] =>
  steps.flatMap(({ rules, lessons, defects, board }, at) => {
    const list = (kind: Mention['kind'], ids: readonly string[], field: string): Mention[] =>
      ids.map((id, i) => ({ kind, id, path: ['steps', at, field, i] }));
    return [
      ...list('rule', rules, 'rules'),
      ...list('lesson', lessons, 'lessons'),
      ...list('defect', defects, 'defects'),
      { kind: 'defect', id: board, path: ['steps', at, 'board'] },
    ];
  });

/** The steps of a first coat, or every fault in them. */
export const firstCoatTable = (known: Knowledge, root: ContentRoot): Table<FirstCoat> =>
  readTable(known, root, 'content/first-coat.yaml', FirstCoat, mentionsOf);

/** The steps of a first coat; throws every fault as a line `file:line: what; what to do`. */
export const readFirstCoat = (known: Knowledge, root: ContentRoot): FirstCoat =>
  orThrow(firstCoatTable(known, root));
