import { z } from 'zod';
import { SourceId } from './ids.ts';

/** How a statement is known. Published and remembered statements name their source. */
export const GRADES = ['published', 'common-practice', 'from-memory', 'invented'] as const;
export type Grade = (typeof GRADES)[number];

/** One statement with its provenance. */
export const Claim = z
  .strictObject({
    says: z.string().min(12).describe('The statement, in our own words, with its figures and units.'),
    grade: z.enum(GRADES).describe('How we know it.'),
    source: SourceId.optional().describe('A file in content/sources; needed for published and from-memory.'),
    at: z.string().optional().describe('Page, table or clause in the source.'),
    disputed: z.string().optional().describe('What other sources say instead, where they disagree.'),
  })
  .meta({ id: 'claim', description: 'A statement with its provenance.' });
export type Claim = z.infer<typeof Claim>;

/** What a sentence that stands elsewhere rests on. */
export const Ground = Claim.omit({ says: true }).meta({
  id: 'ground',
  description: 'The provenance of a sentence that stands elsewhere.',
});

export const SOURCE_KINDS = [
  'standard',
  'handbook',
  'agency',
  'data-sheet',
  'article',
  'forum',
  'library',
] as const;

/** A work that claims rest on. A maker's data sheet is cited without the maker. */
export const Source = z.strictObject({
  title: z.string().min(3).describe('Its title; a data sheet without its maker.'),
  kind: z.enum(SOURCE_KINDS).describe('What kind of work it is.'),
  author: z.string().optional().describe('Who wrote it, where it is a work of one.'),
  edition: z.string().optional().describe('Which edition or version.'),
  year: z
    .union([z.int().min(1800).max(2100), z.literal('undated')])
    .optional()
    .describe('The year of this edition, or undated.'),
  link: z
    .url({ protocol: /^https$/ })
    .optional()
    .describe(
      'Where anyone may read it: an address of its own publisher, and only one that is known to be right.',
    ),
  read: z
    .string()
    .min(5)
    .describe('What was really read: the whole, an excerpt, a copy, or nothing (memory).'),
});
export type Source = z.infer<typeof Source>;
