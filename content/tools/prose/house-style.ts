import { z } from 'zod';
import { knowledgeOf } from '#engine/knowledge/knowledge.ts';
import { type ContentRoot, textOf } from '../files.ts';
import { readTable, type Table } from '../table.ts';

export const HOUSE_STYLE = 'content/house-style.yaml';

export const HouseStyle = z.strictObject({
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
export type HouseStyle = z.infer<typeof HouseStyle>;

/** How this site words things; no file is no rule. */
export const houseStyleTable = (root: ContentRoot): Table<HouseStyle> =>
  textOf(root, HOUSE_STYLE) === undefined
    ? { ok: true, value: { spelled: [], write: {}, 'of-others': [] }, lineOf: () => 1 }
    : readTable(knowledgeOf([]), root, HOUSE_STYLE, HouseStyle);
