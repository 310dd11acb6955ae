import type { Issue } from '#engine/faults/issue.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { Source } from '#engine/model/source.ts';

const today = (): string => new Date().toISOString().slice(0, 10);

/** Readers follow what changed on a page, and weigh a source by its year: neither is left out. */
export const undated = ({ defects, remedies, sources }: Knowledge): readonly Issue[] => [
  ...[...defects, ...remedies].flatMap(({ file, changes }): Issue[] =>
    changes.length
      ? []
      : [
          {
            file,
            line: 1,
            code: 'missing-key',
            key: 'changes',
            about: undefined,
            write: `changes: [{ on: ${today()} }]`,
          },
        ],
  ),
  ...sources.flatMap(({ file, year }): Issue[] =>
    year === undefined
      ? [{ file, line: 1, code: 'missing-key', key: 'year', about: Source.shape.year.description }]
      : [],
  ),
];
