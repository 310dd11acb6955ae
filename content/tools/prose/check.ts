import type { Issue } from '#engine/faults/issue.ts';
import { type ContentRoot, textOf } from '../files.ts';
import { HOUSE_STYLE, houseStyleTable } from './house-style.ts';
import { wordedOtherwise } from './worded.ts';

/** Everything that is worded otherwise than this site words it, file by file. */
export const proseFaults = (root: ContentRoot): readonly Issue[] => {
  const table = houseStyleTable(root);
  if (!table.ok) return table.issues;
  const stale = table.value['of-others'].flatMap(({ file }, at): Issue[] =>
    textOf(root, file) === undefined
      ? [
          {
            file: HOUSE_STYLE,
            line: table.lineOf(['of-others', at]),
            code: 'needless-exception',
            what: `the exception for ${file} is no longer needed`,
            mend: 'remove it',
          },
        ]
      : [],
  );
  return [...stale, ...wordedOtherwise(root, table.value)];
};
