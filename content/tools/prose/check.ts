import { z } from 'zod';
import type { Issue } from '#engine/faults/issue.ts';
import { knowledgeOf } from '#engine/knowledge/knowledge.ts';
import { type ContentRoot, textOf } from '../files.ts';
import { readTable, type Table } from '../table.ts';
import { wordedOtherwise } from './worded.ts';

const FILE = 'content/wording.yaml';

export const Wording = z.strictObject({
  spelled: z
    .array(z.string().min(2))
    .default([])
    .describe('Words that are spelled right though an American dictionary lacks them.'),
  write: z
    .record(z.string(), z.array(z.string().min(2)).min(1))
    .default({})
    .describe('The word that is written here → what is not written in its place.'),
  'of-others': z
    .array(z.strictObject({ file: z.string(), why: z.string().min(12) }))
    .default([])
    .describe('Files that tell of someone other than the reader.'),
});
type Wording = z.infer<typeof Wording>;

/** How this site words things; no file is no rule. */
const wordingTable = (root: ContentRoot): Table<Wording> =>
  textOf(root, FILE) === undefined
    ? { ok: true, value: { spelled: [], write: {}, 'of-others': [] }, lineOf: () => 1 }
    : readTable(knowledgeOf([]), root, FILE, Wording);

/** Everything that is worded otherwise than this site words it, file by file. */
export const proseFaults = (root: ContentRoot): readonly Issue[] => {
  const table = wordingTable(root);
  if (!table.ok) return table.issues;
  const stale = table.value['of-others'].flatMap(({ file }, at): Issue[] =>
    textOf(root, file) === undefined
      ? [
          {
            file: FILE,
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
