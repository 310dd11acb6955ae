import { z } from 'zod';

const word = z
  .string()
  .regex(/^[a-z0-9-]+$/, 'write one word in small letters, without capitals, marks or an apostrophe');
const words = z
  .string()
  .regex(
    /^[a-z0-9-]+( [a-z0-9-]+)?$/,
    'write one or two words in small letters, without capitals, marks or an apostrophe',
  );

/** What the search passes over, and spellings that it reads as others. What says the same: kin.ts. */
export const SearchWords = z
  .strictObject({
    stop: z
      .array(words)
      .min(1)
      .describe('Words, or pairs of words, that say nothing about which flaw it is.'),
    silent: z
      .array(word)
      .min(1)
      .describe('Words that never say anything, not even beside others; the rest is learned from.'),
    spellings: z.record(word, word).describe('British, informal or older spelling → the spelling used here.'),
  })
  .meta({
    id: 'SearchWords',
    description: 'What the search passes over, and spellings that it reads as others.',
  });
export type SearchWords = z.infer<typeof SearchWords>;
